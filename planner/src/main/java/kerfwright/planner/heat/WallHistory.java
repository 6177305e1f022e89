package kerfwright.planner.heat;

import java.util.Arrays;
import kerfwright.catalogue.limit.SafetyLimits;
import kerfwright.physics.heat.ThermalDose;

/**
 * Rise at the pulp wall against time.
 *
 * @param timesS output times
 * @param riseK rise above the temperature at the start
 * @param bodyC that temperature
 */
public record WallHistory(double[] timesS, double[] riseK, double bodyC) {
  /** Screening limit at the pulp: one animal study, no cliff (Zach and Cohen 1965). */
  public static final double LIMIT_K = SafetyLimits.packaged().pulpRise().kelvins();

  /** Greatest rise; zero where the wall only cools. */
  public double peakK() {
    double peak = 0;
    for (double rise : riseK) {
      peak = Math.max(peak, rise);
    }
    return peak;
  }

  /** Time spent above the limit. */
  public double secondsAboveLimit() {
    return secondsAbove(LIMIT_K);
  }

  /** Time spent above a rise. */
  public double secondsAbove(double limitK) {
    return ThermalDose.secondsAbove(timesS, riseK, limitK);
  }

  /** Thermal dose, minutes at 43 degrees; see {@link ThermalDose}. */
  public double cem43Min() {
    double[] temperaturesC = new double[riseK.length];
    for (int i = 0; i < riseK.length; i++) {
      temperaturesC[i] = bodyC + riseK[i];
    }
    return ThermalDose.cem43Min(timesS, temperaturesC);
  }

  /** Rise at a time, the last one after the end. */
  public double at(double timeS) {
    return riseK.length == 0 ? 0 : riseK[index(timeS)];
  }

  /** Least rise from a time to another, both included. */
  public double lowestK(double fromS, double toS) {
    double lowest = at(toS);
    for (int i = riseK.length == 0 ? 0 : index(fromS); i < riseK.length && timesS[i] <= toS; i++) {
      lowest = Math.min(lowest, riseK[i]);
    }
    return lowest;
  }

  /** Greatest rise from a time to another, both included. */
  public double highestK(double fromS, double toS) {
    double highest = at(toS);
    for (int i = riseK.length == 0 ? 0 : index(fromS); i < riseK.length && timesS[i] <= toS; i++) {
      highest = Math.max(highest, riseK[i]);
    }
    return highest;
  }

  private int index(double timeS) {
    int found = Arrays.binarySearch(timesS, timeS);
    return found >= 0 ? found : Math.min(-found - 1, riseK.length - 1);
  }
}
