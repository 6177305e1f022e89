package kerfwright.planner.evidence;

/** How much slower a working part cuts after steam sterilising, percent. */
record SterilisationFigure() implements Figure {
  @Override
  public double of(Trial trial, String unit) {
    return 100 * (1 - trial.afterSterilising());
  }
}
