package kerfwright.planner.operation;

import kerfwright.catalogue.operation.Operating;
import kerfwright.catalogue.operation.Operation;
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
  /** The pace of an operation: as it asks, else the usual one for its purpose. */
  public static Pace of(Operation operation, double coolantMlPerMin) {
    Operating operating = operation.operating();
    if (operating.contactS() > 0) {
      return new Pace(operating.contactS(), operating.pauseS());
    }
    if (coolantMlPerMin < CutCase.DRY_ML_PER_MIN) {
      return new Pace(2, 2);
    }
    return switch (Purpose.of(operation.task())) {
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
