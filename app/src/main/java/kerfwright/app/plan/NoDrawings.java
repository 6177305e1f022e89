package kerfwright.app.plan;

import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;

/** No drawings at all. */
public final class NoDrawings implements PlanDrawings {
  @Override
  public String section(CutPlan plan) {
    return "";
  }

  @Override
  public String heat(CutPlan plan) {
    return "";
  }

  @Override
  public String instrument(PlannedStep step) {
    return "";
  }

  @Override
  public String stroke(PlannedStep step) {
    return "";
  }

  @Override
  public String head(PlannedStep step) {
    return "";
  }
}
