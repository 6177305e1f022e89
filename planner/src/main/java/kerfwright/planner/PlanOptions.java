package kerfwright.planner;

import kerfwright.planner.casework.OwnPace;

/**
 * How a plan is computed.
 *
 * @param samples how many samples carry the uncertainty, at least 1
 * @param seed seed of the samples: the same seed gives the same plan
 * @param quick true where the heat is followed by the column alone, for a first look while a case
 *     is still being changed
 * @param pace the practice's own pace and wear
 */
public record PlanOptions(int samples, long seed, boolean quick, OwnPace pace) {
  /** 256 samples, seed 1. */
  public static final PlanOptions USUAL = new PlanOptions(256, 1);

  /** By the literature alone. */
  public PlanOptions(int samples, long seed) {
    this(samples, seed, false);
  }

  public PlanOptions(int samples, long seed, boolean quick) {
    this(samples, seed, quick, OwnPace.NONE);
  }

  public PlanOptions {
    if (samples < 1 || samples > 100_000) {
      throw new IllegalArgumentException("samples must be 1 to 100000, got " + samples);
    }
  }
}
