package kerfwright.app.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.PulpHeat;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;

/** How figures are written for people: no more digits than they deserve, the range behind. */
public final class Figures {
  private static final double STAYS_COOL_K = 0.05;

  private static final char THIN_GAP = '\u00A0';
  private static final int DIGITS = 2;

  private Figures() {}

  /** "12 s (8 to 20)"; without the bracket where the ends round to the same figure. */
  public static String withRange(Estimate estimate, String unit) {
    return withRange(
        rounded(estimate.low(), DIGITS),
        rounded(estimate.typical(), DIGITS),
        rounded(estimate.high(), DIGITS),
        unit);
  }

  private static String withRange(String low, String typical, String high, String unit) {
    String middle = typical + " " + unit;
    return low.equals(high) ? middle : middle + " (" + low + " to " + high + ")";
  }

  /** A thickness or depth with its range. */
  public static String millimetres(Range<Length> range) {
    return depth(
        new Estimate(
            range.low().millimetres(), range.typical().millimetres(), range.high().millimetres()));
  }

  /** A depth in mm, to the tenth; to the hundredth where it is thin. */
  public static String depth(Estimate mm) {
    return withRange(tenth(mm.low()), tenth(mm.typical()), tenth(mm.high()), "mm");
  }

  /** The middle of a depth alone, without unit. */
  public static String tenth(double mm) {
    return mm == 0 ? "0" : places(mm, mm < 0.995 ? 2 : 1);
  }

  /** A speed of rotation set: to three digits, grouped by thousands. */
  public static String rpm(double rpm) {
    return grouped(rounded(rpm, 3)) + " rpm";
  }

  /** A speed of rotation with its range. */
  public static String rpm(Estimate rpm) {
    return withRange(
        grouped(rounded(rpm.low(), DIGITS)),
        grouped(rounded(rpm.typical(), DIGITS)),
        grouped(rounded(rpm.high(), DIGITS)),
        "rpm");
  }

  /** A time: seconds, above 100 s minutes. */
  public static String time(Estimate seconds) {
    if (seconds.typical() < 99.5) {
      return withRange(seconds, "s");
    }
    return withRange(
        new Estimate(seconds.low() / 60, seconds.typical() / 60, seconds.high() / 60), "min");
  }

  /** A figure alone, to two digits. */
  public static String plain(double value) {
    return rounded(value, DIGITS);
  }

  private static String rounded(double value, int digits) {
    if (value == 0) {
      return "0";
    }
    BigDecimal exact = new BigDecimal(value);
    BigDecimal round = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
    // a hundredth is the finest that means anything beside these units
    if (round.scale() > 2) {
      round = exact.setScale(2, RoundingMode.HALF_EVEN);
    }
    return round.signum() == 0 ? "0" : round.stripTrailingZeros().toPlainString();
  }

  private static String places(double value, int places) {
    return new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN).toPlainString();
  }

  private static String grouped(String digits) {
    StringBuilder text = new StringBuilder(digits);
    int end = digits.indexOf('.') < 0 ? digits.length() : digits.indexOf('.');
    if (end > 4) {
      for (int i = end - 3; i > 0; i -= 3) {
        text.insert(i, THIN_GAP);
      }
    }
    return text.toString();
  }

  /** What the pulp wall does, in words: "rises by 2.1 K (0.4 to 5.2); screening limit 5.5 K". */
  public static String pulpWall(CutPlan plan) {
    PulpHeat pulp = plan.pulp();
    if (pulp == null || !plan.cutCase().pulp().protectsPulp()) {
      return "is not alive, so no heat limit applies";
    }
    String rise =
        pulp.peakRiseK().high() < STAYS_COOL_K
            ? "does not warm"
            : "rises by " + withRange(pulp.peakRiseK(), "K") + " at most";
    return rise + "; screening limit " + plain(pulp.limitK()) + " K";
  }
}
