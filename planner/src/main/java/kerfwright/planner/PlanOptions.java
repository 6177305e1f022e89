package kerfwright.planner;

/**
 * How a plan is computed.
 *
 * @param samples how many samples carry the uncertainty, at least 1
 * @param seed seed of the samples: the same seed gives the same plan
 */
public record PlanOptions(int samples, long seed) {
  /** 256 samples, seed 1. */
  public static final PlanOptions USUAL = new PlanOptions(256, 1);

  public PlanOptions {
    if (samples < 1 || samples > 100_000) {
      throw new IllegalArgumentException("samples must be 1 to 100000, got " + samples);
    }
  }
}
