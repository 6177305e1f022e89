package kerfwright.planner.evidence.figure;

/** Share of the load that cracks the work rather than making it flow. */
record BrittleShareFigure() implements Figure {
  @Override
  public double of(Trial trial, String unit) {
    return trial.cut().brittleShare();
  }
}
