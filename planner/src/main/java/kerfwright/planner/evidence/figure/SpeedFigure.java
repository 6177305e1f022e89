package kerfwright.planner.evidence.figure;

/** Speed that holds under the load, rpm. */
record SpeedFigure() implements Figure {
  @Override
  public double of(Trial trial, String unit) {
    return trial.rpm();
  }
}
