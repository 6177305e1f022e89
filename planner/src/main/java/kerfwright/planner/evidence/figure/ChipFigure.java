package kerfwright.planner.evidence.figure;

/** Mean depth a grain or blade bites, nm. */
record ChipFigure() implements Figure {
  @Override
  public double of(Trial trial, String unit) {
    return trial.cut().chipThicknessM() * 1e9;
  }
}
