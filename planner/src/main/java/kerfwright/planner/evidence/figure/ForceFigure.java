package kerfwright.planner.evidence.figure;

/** Force along the rim, N. */
record ForceFigure() implements Figure {
  @Override
  public double of(Trial trial, String unit) {
    return trial.cut().tangentialN();
  }
}
