package kerfwright.planner.evidence.figure;

/** Energy spent on a volume, J/mm3. */
record SpecificEnergyFigure() implements Figure {
  @Override
  public double of(Trial trial, String unit) {
    return trial.cut().powerW() / trial.removalM3PerS() * 1e-9;
  }
}
