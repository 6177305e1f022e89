package kerfwright.planner.rule;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;

/**
 * A named rule that takes a choice away.
 *
 * @param code stable code, words with hyphens
 * @param basis how sure it is
 * @param sources where it comes from
 * @param test why a choice is not allowed, or nothing
 */
public record Veto(
    String code,
    Basis basis,
    List<SourceKey> sources,
    BiFunction<Candidate, RuleContext, Optional<Exclusion>> test)
    implements Standing {
  public Veto {
    sources = List.copyOf(sources);
  }

  /** Why the choice is not allowed, or nothing. */
  public Optional<Exclusion> against(Candidate candidate, RuleContext context) {
    return test.apply(candidate, context);
  }
}
