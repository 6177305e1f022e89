package kerfwright.planner.evidence.figure;

import kerfwright.catalogue.evidence.ConditionKind;

/**
 * How much less a working part cuts for steam sterilising, percent: after some sterilisations, or
 * on average over cycles of cutting that each end with one.
 */
record SterilisationFigure() implements Figure {
  @Override
  public double of(Trial trial, String unit) {
    if (!trial.has(ConditionKind.CYCLES)) {
      return 100 * (1 - trial.afterSterilising());
    }
    int cycles = (int) trial.of(ConditionKind.CYCLES);
    double sum = 0;
    for (int done = 0; done < cycles; done++) {
      sum += trial.afterSterilising(done);
    }
    return 100 * (1 - sum / cycles);
  }
}
