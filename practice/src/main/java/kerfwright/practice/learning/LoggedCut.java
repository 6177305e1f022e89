package kerfwright.practice.learning;

import kerfwright.planner.casework.OwnPace;

/**
 * A step as it was planned by the literature and as it went.
 *
 * @param where material and kind of instrument
 * @param literatureS what the models without any factor of the practice say, seconds
 * @param takenS what it took, seconds
 * @param livesUsed lives the instrument had behind it, by the models: 0 new, ln 3 worn out
 * @param measured whether somebody measured it for its own sake
 */
public record LoggedCut(
    OwnPace.Where where, double literatureS, double takenS, double livesUsed, boolean measured) {
  /** Logged times further apart than this are a clock left running or a step not done. */
  public static final double FURTHEST = 30;

  public LoggedCut {
    if (!(literatureS > 0 && takenS > 0 && livesUsed >= 0)) {
      throw new IllegalArgumentException(
          "times " + literatureS + ", " + takenS + ", lives " + livesUsed);
    }
  }

  /** A step logged at the chair. */
  public LoggedCut(OwnPace.Where where, double literatureS, double takenS, double livesUsed) {
    this(where, literatureS, takenS, livesUsed, false);
  }

  double logRatio() {
    return Math.log(takenS / literatureS);
  }

  public boolean believable() {
    return measured || Math.abs(logRatio()) <= Math.log(FURTHEST);
  }
}
