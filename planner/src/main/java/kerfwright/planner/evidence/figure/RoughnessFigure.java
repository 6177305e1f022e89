package kerfwright.planner.evidence.figure;

/** Roughness Ra the pass leaves, um. */
record RoughnessFigure() implements Figure {
  @Override
  public double of(Trial trial, String unit) {
    return trial.part().raM(trial.work(), trial.cut()) * 1e6;
  }
}
