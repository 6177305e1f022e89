package kerfwright.planner.plan;

/**
 * Heat at the pulp wall over the whole sequence and one minute after it.
 *
 * @param peakRiseK greatest rise above body temperature; 0 where it only cools
 * @param secondsAboveLimit time above the limit
 * @param limitK the screening limit, 5.5 K
 * @param cem43Min thermal dose, minutes at 43 degrees; no validated limit for the pulp is known
 * @param remainingDentineMm dentine left between the floor and the pulp
 * @param curve the computed temperature at the pulp wall against time
 */
public record PulpHeat(
    Estimate peakRiseK,
    Estimate secondsAboveLimit,
    double limitK,
    Estimate cem43Min,
    Estimate remainingDentineMm,
    HeatCurve curve) {
  /** How the rise stands against the limit. */
  public PulpBand band() {
    return PulpBand.of(peakRiseK, limitK);
  }
}
