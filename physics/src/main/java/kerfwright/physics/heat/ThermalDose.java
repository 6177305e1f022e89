package kerfwright.physics.heat;

/**
 * Computes what a temperature curve means for tissue: peak, time above a limit, and thermal dose as
 * equivalent minutes at 43 degC.
 *
 * <pre>
 *   CEM43 = integral of R^(43 - T) dt,   R = 0.5 for T >= 43,   R = 0.25 for T < 43
 *
 *   T temperature, degC      t time, min      CEM43 equivalent minutes
 * </pre>
 *
 * <p>Curves are taken as straight lines between samples, from the first sample on; limits are
 * crossed between samples, and the dose is integrated exactly along each line.
 *
 * <p>Valid for moderate heating, roughly 2 to 15 K above 37 to 39 degC (Dewhirst and others, Proc
 * SPIE 4954, 2003). No validated limit of dose for the human pulp is known: show the number, do not
 * judge by it. Leaves out: the cut-off below 39 degC that some codes apply.
 *
 * <p>Source: Sapareto SA, Dewey WC. Int J Radiat Oncol Biol Phys 1984;10:787-800 (citation from
 * memory; the halving and quartering rule as commonly stated).
 */
public final class ThermalDose {
  private ThermalDose() {}

  /** Highest value of a curve. */
  public static double peakC(double[] temperaturesC) {
    double peak = Double.NEGATIVE_INFINITY;
    for (double value : temperaturesC) {
      peak = Math.max(peak, value);
    }
    return peak;
  }

  /** Seconds a curve spends above a limit. */
  public static double secondsAbove(double[] timesS, double[] temperaturesC, double limitC) {
    double sum = 0;
    for (int i = 1; i < timesS.length; i++) {
      double from = temperaturesC[i - 1] - limitC;
      double to = temperaturesC[i] - limitC;
      double seconds = timesS[i] - timesS[i - 1];
      if (from >= 0 && to >= 0) {
        sum += from == 0 && to == 0 ? 0 : seconds;
      } else if (from > 0 || to > 0) {
        sum += seconds * Math.max(from, to) / Math.abs(from - to);
      }
    }
    return sum;
  }

  /** Equivalent minutes at 43 degC. */
  public static double cem43Min(double[] timesS, double[] temperaturesC) {
    double sum = 0;
    for (int i = 1; i < timesS.length; i++) {
      double minutes = (timesS[i] - timesS[i - 1]) / 60;
      double from = temperaturesC[i - 1] - 43;
      double to = temperaturesC[i] - 43;
      if (from < 0 != to < 0) {
        double share = from / (from - to);
        sum += along(minutes * share, from, 0, Math.log(from < 0 ? 4 : 2));
        sum += along(minutes * (1 - share), 0, to, Math.log(to < 0 ? 4 : 2));
      } else {
        sum += along(minutes, from, to, Math.log(from < 0 ? 4 : 2));
      }
    }
    return sum;
  }

  /** Integral of exp(rate u) over a straight line of u. */
  private static double along(double minutes, double from, double to, double rate) {
    double span = rate * (to - from);
    double mean = Math.abs(span) < 1e-9 ? 1 + 0.5 * span : Math.expm1(span) / span;
    return minutes * Math.exp(rate * from) * mean;
  }
}
