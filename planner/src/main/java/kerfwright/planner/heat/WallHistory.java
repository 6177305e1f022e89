package kerfwright.planner.heat;

/**
 * Rise at the pulp wall against time.
 *
 * @param timesS output times
 * @param riseK rise above the temperature at the start
 * @param bodyC that temperature
 */
public record WallHistory(double[] timesS, double[] riseK, double bodyC) {
  /** Screening limit at the pulp: one animal study, no cliff (Zach and Cohen 1965). */
  public static final double LIMIT_K = 5.5;

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
    double sum = 0;
    for (int i = 0; i < riseK.length; i++) {
      if (riseK[i] > LIMIT_K) {
        sum += timesS[i] - (i == 0 ? 0 : timesS[i - 1]);
      }
    }
    return sum;
  }

  /**
   * Thermal dose, minutes at 43 degrees: sum of R^(43 - T), R = 0.5 from 43 up, 0.25 below
   * (Sapareto SA, Dewey WC 1984, citation from memory).
   */
  public double cem43Min() {
    double sum = 0;
    for (int i = 0; i < riseK.length; i++) {
      double t = bodyC + riseK[i];
      double step = timesS[i] - (i == 0 ? 0 : timesS[i - 1]);
      sum += Math.pow(t >= 43 ? 0.5 : 0.25, 43 - t) * step / 60;
    }
    return sum;
  }

  /** Rise at a time, the last one after the end. */
  public double at(double timeS) {
    int index = java.util.Arrays.binarySearch(timesS, timeS);
    int i = index >= 0 ? index : Math.min(-index - 1, riseK.length - 1);
    return riseK.length == 0 ? 0 : riseK[i];
  }
}
