package kerfwright.planner.rule;

import java.util.Optional;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;

/** A named rule that takes a choice away. Its name is a sentence. */
public interface Veto extends Standing {
  /** Why the choice is not allowed, or nothing. */
  Optional<Exclusion> against(Candidate candidate, RuleContext context);
}
