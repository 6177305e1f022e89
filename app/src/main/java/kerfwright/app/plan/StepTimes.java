package kerfwright.app.plan;

import java.util.ArrayList;
import java.util.List;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;

/** When each step begins; the time the steps leave over goes to the changes between them. */
public final class StepTimes {
  private StepTimes() {}

  /** Beginnings on the clock of the heat curve, s. */
  public static List<Double> startsS(CutPlan plan) {
    List<PlannedStep> steps = plan.steps();
    double left = plan.totalTimeS().typical();
    int changes = 0;
    for (int i = 0; i < steps.size(); i++) {
      left -= steps.get(i).timeS().typical();
      changes += changed(steps, i) ? 1 : 0;
    }
    List<Double> starts = new ArrayList<>();
    double at = 0;
    for (int i = 0; i < steps.size(); i++) {
      at += changed(steps, i) ? Math.max(0, left) / changes : 0;
      starts.add(at);
      at += steps.get(i).timeS().typical();
    }
    return starts;
  }

  private static boolean changed(List<PlannedStep> steps, int index) {
    if (index == 0) {
      return false;
    }
    PlannedStep before = steps.get(index - 1);
    PlannedStep now = steps.get(index);
    return !before.instrument().id().equals(now.instrument().id())
        || !before.handpiece().id().equals(now.handpiece().id());
  }
}
