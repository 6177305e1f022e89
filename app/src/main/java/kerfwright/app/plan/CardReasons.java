package kerfwright.app.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.Reason;

/** Why a plan is as it is, for a small sheet: what is said of several steps is said once. */
public final class CardReasons {
  private CardReasons() {}

  /**
   * The first reason for each instrument: the text with its standing, and the steps it is said of.
   */
  public static Map<String, String> supporting(Say say, CutPlan plan) {
    Map<String, String> said = new LinkedHashMap<>();
    for (PlannedStep step : plan.steps()) {
      if (Words.sameInstrument(plan, step)) {
        continue;
      }
      step.reasons().stream()
          .filter(Reason::supports)
          .findFirst()
          .ifPresent(reason -> add(say, said, step, reason));
    }
    return said;
  }

  /** Everything that speaks against a step, the same way. */
  public static Map<String, String> opposing(Say say, CutPlan plan) {
    Map<String, String> said = new LinkedHashMap<>();
    for (PlannedStep step : plan.steps()) {
      List<Reason> against = step.reasons().stream().filter(r -> !r.supports()).toList();
      against.forEach(reason -> add(say, said, step, reason));
    }
    return said;
  }

  private static void add(Say say, Map<String, String> said, PlannedStep step, Reason reason) {
    String text = say.of(reason.message()) + " (" + Labels.basis(say, reason.basis()) + ")";
    said.merge(text, Integer.toString(step.order()), (steps, one) -> steps + ", " + one);
  }
}
