package kerfwright.planner.plan;

import kerfwright.quantity.Identified;

/** How the rise at the pulp wall stands against the screening limit; none of it means harmless. */
public enum PulpBand implements Identified {
  /** The whole band stays below the screen. */
  BELOW,
  /** Its upper end passes the screen. */
  MAY_PASS,
  /** Its typical value passes the screen: a plan that protects a pulp is refused. */
  PASSES;

  /** How a rise stands against a limit. */
  public static PulpBand of(Estimate riseK, double limitK) {
    if (riseK.typical() >= limitK) {
      return PASSES;
    }
    return riseK.high() >= limitK ? MAY_PASS : BELOW;
  }
}
