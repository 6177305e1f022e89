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
 */
public record CutHeat(
    double cuttingS,
    double contactS,
    double pauseS,
    double powerW,
    double deepensMm,
    double changeS) {
  public double durationS() {
    return cuttingS + Math.floor(cuttingS / contactS) * pauseS;
  }
}
