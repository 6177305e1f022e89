package kerfwright.planner.rule;

import java.util.List;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.plan.Reason;

/** A named rule that adds evidence for or against a choice; it never changes the choice. */
public interface EvidenceRule extends Standing {
  /** Evidence on this choice; empty where the rule has nothing to say. */
  List<Reason> on(Candidate candidate, RuleContext context);

  /** One piece of evidence in this rule's name and standing. */
  default List<Reason> say(boolean supports, String text) {
    return List.of(new Reason(code(), text, supports, basis(), sources()));
  }
}
