package kerfwright.planner.sequence;

import kerfwright.planner.casework.CutCase;
import kerfwright.planner.plan.Purpose;

/**
 * Length of one contact and of the pause after it, water on in both.
 *
 * <p>An experienced operator's contacts lasted 0.25 to 0.4 s in intermittent and about 10 s in
 * continuous cutting (J Oral Rehabil 1995;22:67-72); a few seconds between is common practice, and
 * dry work is paused as long as it is cut.
 *
 * @param cutS contact
 * @param pauseS pause
 */
public record Pace(double cutS, double pauseS) {
  /** The usual pace for a purpose. */
  public static Pace usual(Purpose purpose, double coolantMlPerMin) {
    if (coolantMlPerMin < CutCase.DRY_ML_PER_MIN) {
      return new Pace(2, 2);
    }
    return switch (purpose) {
      case BULK -> new Pace(4, 1);
      case APPROACH -> new Pace(2, 1);
      case FINISH -> new Pace(3, 1);
      case POLISH -> new Pace(5, 2);
    };
  }

  /** Pauses that go with a cutting time. */
  public double pausesS(double cuttingS) {
    return Math.floor(cuttingS / cutS) * pauseS;
  }
}
