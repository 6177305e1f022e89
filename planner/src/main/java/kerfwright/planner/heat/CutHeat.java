package kerfwright.planner.heat;

/**
 * One step of the sequence as the heat model sees it.
 *
 * @param cuttingS time cutting
 * @param contactS one contact
 * @param pauseS pause after it
 * @param powerW power at the contact while cutting
 * @param deepensMm how far the floor goes down in the step
 * @param changeS pause before the step to change instrument, water off
 * @param contactMm2 area over which instrument and tooth touch
 */
public record CutHeat(
    double cuttingS,
    double contactS,
    double pauseS,
    double powerW,
    double deepensMm,
    double changeS,
    double contactMm2) {
  /** 3 mm of a usual head at a usual depth of cut (project setting). */
  public static final double USUAL_CONTACT_MM2 = 0.75;

  /** A step with the usual area of contact. */
  public CutHeat(
      double cuttingS,
      double contactS,
      double pauseS,
      double powerW,
      double deepensMm,
      double changeS) {
    this(cuttingS, contactS, pauseS, powerW, deepensMm, changeS, USUAL_CONTACT_MM2);
  }

  /** The same with another depth. */
  CutHeat deepening(double mm) {
    return new CutHeat(cuttingS, contactS, pauseS, powerW, mm, changeS, contactMm2);
  }

  public double durationS() {
    return cuttingS + Math.floor(cuttingS / contactS) * pauseS;
  }
}
