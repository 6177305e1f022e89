package kerfwright.planner.heat;

import kerfwright.catalogue.limit.SafetyLimits;
import kerfwright.planner.plan.Estimate;
import kerfwright.quantity.Identified;

/** The heat at the outer surface of a root: computed, or not computed with the reason. */
public sealed interface RootHeat {
  /** Bone and root before the work. */
  double BODY_C = 37;

  /** Rise at which bone reaches the temperature it may not hold for a minute. */
  double LIMIT_K = SafetyLimits.packaged().boneTemperature().celsius() - BODY_C;

  /** Why there is no figure. */
  enum Reason implements Identified {
    /** Neither was the wall told nor does the catalogue know a usual one for the tooth. */
    WALL_NOT_KNOWN,
    /** Nothing is cut. */
    NO_CUTS
  }

  /**
   * A computed rise.
   *
   * @param peakRiseK greatest rise: thickest, typical and thinnest wall
   * @param typical rise against time with the typical wall
   */
  record Computed(Estimate peakRiseK, WallHistory typical) implements RootHeat {
    /** Whether the typical rise stays below the limit. */
    public boolean holds() {
      return peakRiseK.typical() < LIMIT_K;
    }

    /** Time above the limit with the typical wall; bone is harmed from a minute on. */
    public double secondsAboveLimit() {
      return typical.secondsAbove(LIMIT_K);
    }
  }

  /** No figure, for a reason. */
  record NotComputed(Reason reason) implements RootHeat {}
}
