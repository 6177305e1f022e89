package kerfwright.physics.heat.field;

/**
 * Where the heat went, in joules: stored = cut + washed + faces - removed.
 *
 * @param storedJ heat in the body at the end less heat in it at the start; both above 0 degC
 * @param cutJ heat brought in by the flux of cutting
 * @param washedJ heat brought in by coolant over top, floor and cavity wall; negative when it cools
 * @param facesJ heat brought in through bottom and side, and by blood
 * @param removedJ heat (above 0 degC) carried off with removed material
 * @param turnoverJ sum of the sizes of all terms, against which the remainder is judged
 */
public record EnergyBalance(
    double storedJ, double cutJ, double washedJ, double facesJ, double removedJ, double turnoverJ) {
  /** What the books do not account for, as a share of the heat turned over. */
  public double relativeRemainder() {
    double remainder = storedJ - (cutJ + washedJ + facesJ - removedJ);
    return turnoverJ == 0 ? Math.abs(remainder) : Math.abs(remainder) / turnoverJ;
  }
}
