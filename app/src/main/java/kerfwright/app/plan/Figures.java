package kerfwright.app.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.PulpHeat;
import kerfwright.planner.plan.RootRise;
import kerfwright.planner.plan.TimeBand;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;
import kerfwright.quantity.Range;

/**
 * How figures are written for people: no more digits than they deserve, the range behind. Half is
 * rounded up, as in the drawings.
 */
public final class Figures {
  private static final Say ENGLISH = Say.in(Language.ENGLISH);

  private static final char THIN_GAP = '\u00A0';
  private static final int DIGITS = 2;

  private Figures() {}

  /** "12 s (8 to 20)"; without the bracket where the ends round to the same figure. */
  public static String withRange(Say say, Estimate estimate, String unit) {
    return withRange(
        say,
        rounded(estimate.low(), DIGITS),
        rounded(estimate.typical(), DIGITS),
        rounded(estimate.high(), DIGITS),
        unit);
  }

  private static String withRange(Say say, String low, String typical, String high, String unit) {
    return low.equals(high)
        ? say.figures(typical) + " " + unit
        : say.at("plan.range", say.figures(typical), say.figures(low), say.figures(high), unit);
  }

  /** A thickness or depth with its range. */
  public static String millimetres(Say say, Range<Length> range) {
    return depth(
        say,
        new Estimate(
            range.low().millimetres(), range.typical().millimetres(), range.high().millimetres()));
  }

  /** A depth in mm, to the tenth; to the hundredth where it is thin. */
  public static String depth(Say say, Estimate mm) {
    return withRange(say, tenths(mm.low()), tenths(mm.typical()), tenths(mm.high()), "mm");
  }

  /** The middle of a depth alone, without unit. */
  public static String tenth(Say say, double mm) {
    return say.figures(tenths(mm));
  }

  private static String tenths(double mm) {
    return mm == 0 ? "0" : places(mm, mm < 0.995 ? 2 : 1);
  }

  /** A speed of rotation set: to three digits, grouped by thousands. */
  public static String rpm(Say say, double rpm) {
    return turns(say, rpm) + " " + say.at("plan.rpm");
  }

  /** The same without its unit. */
  public static String turns(Say say, double rpm) {
    return say.figures(grouped(rounded(rpm, 3)));
  }

  /** A speed of rotation with its range. */
  public static String rpm(Say say, Estimate rpm) {
    return withRange(
        say,
        grouped(rounded(rpm.low(), DIGITS)),
        grouped(rounded(rpm.typical(), DIGITS)),
        grouped(rounded(rpm.high(), DIGITS)),
        say.at("plan.rpm"));
  }

  /** A time in words as wide as it is known, the figure behind. */
  public static String time(Say say, Estimate seconds) {
    return say.at("plan.time-words", say.of(new TimeBand(seconds).words()), seconds(say, seconds));
  }

  /** A time as a figure: seconds, above 100 s minutes. */
  public static String seconds(Say say, Estimate seconds) {
    if (seconds.typical() < 99.5) {
      return withRange(say, seconds, "s");
    }
    return withRange(
        say, new Estimate(seconds.low() / 60, seconds.typical() / 60, seconds.high() / 60), "min");
  }

  /** A figure alone, to two digits. */
  public static String plain(Say say, double value) {
    return say.figures(rounded(value, DIGITS));
  }

  /** In English, for what is not a page. */
  public static String tenth(double mm) {
    return tenth(ENGLISH, mm);
  }

  /** In English, for what is not a page. */
  public static String plain(double value) {
    return plain(ENGLISH, value);
  }

  private static String rounded(double value, int digits) {
    if (value == 0) {
      return "0";
    }
    BigDecimal exact = BigDecimal.valueOf(value);
    BigDecimal round = exact.round(new MathContext(digits, RoundingMode.HALF_UP));
    // a hundredth is the finest that means anything beside these units
    if (round.scale() > 2) {
      round = exact.setScale(2, RoundingMode.HALF_UP);
    }
    return round.signum() == 0 ? "0" : round.stripTrailingZeros().toPlainString();
  }

  private static String places(double value, int places) {
    return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
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

  /** What the outer root surface does, in words; empty where it is not the target. */
  public static String rootSurface(Say say, CutPlan plan) {
    RootRise root = plan.root();
    if (root == null) {
      return "";
    }
    Estimate peak = root.peakRiseK();
    Message why = root.why();
    return peak == null || why != null
        ? say.of(java.util.Objects.requireNonNull(why))
        : say.at("plan.root-warms", withRange(say, peak, "K"), plain(say, root.limitK()));
  }

  /** How the pulp wall stands against the screen: "may pass the 5.5 K screen: 2.1 K (0 to 7)". */
  public static String pulpWall(Say say, CutPlan plan) {
    PulpHeat pulp = plan.pulp();
    if (pulp == null) {
      boolean opened = plan.cutCase().pulp().protectsPulp();
      return say.at(opened ? "plan.pulp-not-judged" : "plan.pulp-not-alive");
    }
    if (plan.pulpInWords()) {
      return say.at("plan.pulp-dry-" + pulp.band().id()) + ". " + say.at("plan.pulp-in-words");
    }
    return say.at(
        "plan.pulp-" + pulp.band().id(),
        withRange(say, pulp.peakRiseK(), "K"),
        plain(say, pulp.limitK()));
  }
}
