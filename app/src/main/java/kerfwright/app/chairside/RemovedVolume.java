package kerfwright.app.chairside;

import kerfwright.planner.plan.PlannedStep;

/** The volume a step takes away, from its own figures: removal rate times time in contact. */
final class RemovedVolume {
  private static final double S_PER_MIN = 60;

  private RemovedVolume() {}

  static double mm3(PlannedStep step) {
    return step.removalMm3PerMin().typical() * contactS(step) / S_PER_MIN;
  }

  /** The time of a step less the pauses in it: one after every whole contact. */
  static double contactS(PlannedStep step) {
    double cut = step.cutSeconds().typical();
    double pause = step.pauseSeconds().typical();
    double time = step.timeS().typical();
    double round = cut + pause;
    if (round <= 0) {
      return time;
    }
    double whole = Math.floor(time / round);
    return whole * cut + Math.min(cut, time - whole * round);
  }
}
