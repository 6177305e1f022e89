package kerfwright.planner.rule;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.plan.Reason;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;

/**
 * A named rule that adds evidence for or against a choice; it never changes the choice.
 *
 * @param code stable code, words with hyphens
 * @param basis how sure it is
 * @param sources where it comes from
 * @param applies whether it has anything to say about a choice
 * @param favours whether it speaks for the choice
 * @param textFor sentence for
 * @param textAgainst sentence against
 */
public record EvidenceRule(
    String code,
    Basis basis,
    List<SourceKey> sources,
    Predicate<Choice> applies,
    Predicate<Choice> favours,
    String textFor,
    String textAgainst)
    implements Standing {
  public EvidenceRule {
    sources = List.copyOf(sources);
  }

  /** A choice in its case. */
  public record Choice(Candidate candidate, RuleContext context) {}

  /** The evidence on a choice, or nothing. */
  public Optional<Reason> on(Candidate candidate, RuleContext context) {
    Choice choice = new Choice(candidate, context);
    if (!applies.test(choice)) {
      return Optional.empty();
    }
    boolean supports = favours.test(choice);
    return Optional.of(
        new Reason(code, supports ? textFor : textAgainst, supports, basis, sources));
  }
}
