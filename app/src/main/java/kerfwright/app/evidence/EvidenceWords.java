package kerfwright.app.evidence;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import kerfwright.catalogue.evidence.Condition;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.catalogue.evidence.SetUp;
import kerfwright.catalogue.table.Numbers;
import kerfwright.planner.evidence.Compared;
import kerfwright.planner.evidence.Summary;
import kerfwright.planner.plan.Estimate;

/** The words and figures that text and document share. */
final class EvidenceWords {
  private static final MathContext DIGITS = new MathContext(3, RoundingMode.HALF_EVEN);

  private EvidenceWords() {}

  /** Three significant digits, without an exponent. */
  static String figure(double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      return "-";
    }
    BigDecimal rounded = new BigDecimal(value).round(DIGITS);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  static String unit(String unit) {
    return unit.equals("1") || unit.equals("none") ? "" : " " + unit;
  }

  /** Unit of what was computed; directions on a finding without a figure have none. */
  static String unit(EvidenceCase one) {
    return switch (one.figure()) {
      case PULP_RISE, SURFACE_RISE, ROOT_RISE -> " K";
      case ROUGHNESS -> " um";
      case SPECIFIC_ENERGY -> " J/mm3";
      case BRITTLE_SHARE -> "";
      case USE_LOSS, STERILISATION_LOSS -> " %";
      case TANGENTIAL_FORCE -> " N";
      case REMOVAL -> one.comparison().interval() ? unit(one.unit()) : removal(one.unit());
      default -> unit(one.unit());
    };
  }

  private static String removal(String unit) {
    return switch (unit) {
      case "mm", "mm3/s", "mg/min", "g" -> " " + unit;
      default -> " mm3/min";
    };
  }

  static String published(EvidenceCase one) {
    if (!one.comparison().interval()) {
      return switch (one.comparison()) {
        case AT_MOST -> "at most " + figure(one.publishedMiddle()) + unit(one.unit());
        case AT_LEAST -> "at least " + figure(one.publishedMiddle()) + unit(one.unit());
        case SAME -> "the same";
        default -> one.comparison().id();
      };
    }
    Numbers n = one.published();
    Double low = n.low();
    Double high = n.high();
    Double typical = n.typical();
    String range = low != null && high != null ? figure(low) + " to " + figure(high) : "";
    String middle = typical == null ? "" : figure(typical);
    String both = middle.isEmpty() ? range : range.isEmpty() ? middle : middle + " (" + range + ")";
    return both + unit(one.unit());
  }

  static String estimate(Estimate e) {
    return e.low() == e.high()
        ? figure(e.typical())
        : figure(e.typical()) + " (" + figure(e.low()) + " to " + figure(e.high()) + ")";
  }

  static String computed(Compared c) {
    String first = estimate(c.computed());
    Estimate second = c.second();
    return first + (second == null ? "" : " against " + estimate(second)) + unit(c.asked());
  }

  static String verdict(Compared c) {
    return c.asked().comparison().interval()
        ? c.verdict().label()
        : c.verdict().label() + ", holds in " + Math.round(100 * c.holdsShare()) + " % of samples";
  }

  static String condition(Condition c) {
    String range =
        c.low() == c.high() ? figure(c.typical()) : figure(c.low()) + " to " + figure(c.high());
    return c.kind().label() + " " + range + unit(c.kind().unit());
  }

  static String conditions(SetUp setUp, boolean told) {
    return setUp.ordered().stream()
        .filter(c -> c.told() == told)
        .map(EvidenceWords::condition)
        .collect(Collectors.joining(", "));
  }

  /** The closing sentences, whatever they come to. */
  static List<String> closing(Summary s) {
    return List.of(
        String.format(
            Locale.ROOT,
            "Validation cases met: %d of %d (%s %%; wanted %s %%).",
            s.met(),
            s.cases(),
            figure(100 * s.share()),
            figure(100 * Summary.WANTED_SHARE)),
        String.format(
            Locale.ROOT,
            "Of these, figures inside their interval: %d of %d (%s %%); directions, rankings and"
                + " bounds right: %d of %d.",
            s.intervalsMet(),
            s.intervals(),
            figure(100 * s.intervalShare()),
            s.directionsMet(),
            s.directions()),
        String.format(
            Locale.ROOT,
            "Median width of the intervals: a factor of %s for rates (%d rows; wanted at most %s),"
                + " %s K for pulp rise (%d rows; wanted at most %s K).",
            figure(s.medianFactor()),
            s.rates(),
            figure(Summary.WANTED_FACTOR),
            figure(s.medianKelvin()),
            s.rises(),
            figure(Summary.WANTED_KELVIN)),
        reached(s)
            ? "The models reach what is wanted of them."
            : "The models do not reach what is wanted of them: rates and temperatures are order of"
                + " magnitude only.");
  }

  private static boolean reached(Summary s) {
    return s.share() >= Summary.WANTED_SHARE
        && s.intervalShare() >= Summary.WANTED_SHARE
        && s.medianFactor() <= Summary.WANTED_FACTOR
        && s.medianKelvin() <= Summary.WANTED_KELVIN;
  }
}
