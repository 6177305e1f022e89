package kerfwright.planner.evidence.figure;

import kerfwright.catalogue.evidence.ConditionKind;

/** How much slower a working part cuts after a volume, percent. */
record UseLossFigure() implements Figure {
  @Override
  public double of(Trial trial, String unit) {
    double volumeM3 = trial.of(ConditionKind.VOLUME) * 1e-9;
    return 100 * trial.lossOver(volumeM3);
  }
}
