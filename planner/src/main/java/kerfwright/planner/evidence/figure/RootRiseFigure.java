package kerfwright.planner.evidence.figure;

import kerfwright.catalogue.evidence.ConditionKind;
import kerfwright.planner.heat.Bore;
import kerfwright.planner.heat.RootSurface;

/** Greatest change at the outer surface of an extracted tooth's root, K. */
record RootRiseFigure() implements Figure {
  @Override
  public double of(Trial trial, String unit) {
    ToothUnderTest tooth = ToothUnderTest.of(trial);
    double diameter = trial.of(ConditionKind.DIAMETER);
    return PulpRiseFigure.largest(
        RootSurface.onTheBench(
            trial.of(ConditionKind.REMAINING),
            trial.dentine(),
            Bore.canal(diameter, trial.of(ConditionKind.AREA) / (Math.PI * diameter)),
            tooth.cuts(),
            trial.of(ConditionKind.WATER),
            tooth.inputs()));
  }
}
