package kerfwright.app.plan;

import kerfwright.planner.PlanOptions;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.plan.CutPlan;

/** Makes a plan from a case and a drawer; the same three arguments give the same plan. */
@FunctionalInterface
public interface PlanMaker {
  CutPlan plan(CutCase cutCase, DrawerSnapshot drawer, PlanOptions options);
}
