package kerfwright.app.evidence;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import kerfwright.app.words.Say;
import kerfwright.catalogue.evidence.Condition;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.catalogue.evidence.Family;
import kerfwright.catalogue.evidence.SetUp;
import kerfwright.catalogue.table.Numbers;
import kerfwright.planner.evidence.Compared;
import kerfwright.planner.evidence.Conditioned;
import kerfwright.planner.evidence.Coverage;
import kerfwright.planner.evidence.EvidenceReport;
import kerfwright.planner.evidence.Summary;
import kerfwright.planner.plan.Estimate;

/** The words and figures that text and document share. */
final class EvidenceWords {
  private static final MathContext DIGITS = new MathContext(3, RoundingMode.HALF_EVEN);

  private EvidenceWords() {}

  /** Three significant digits, without an exponent. */
  static String figure(Say say, double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      return "-";
    }
    BigDecimal rounded = new BigDecimal(value).round(DIGITS);
    return say.figures(rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString());
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

  static String published(Say say, EvidenceCase one) {
    if (!one.comparison().interval()) {
      return switch (one.comparison()) {
        case AT_MOST ->
            say.at("evidence.at-most", figure(say, one.publishedMiddle()) + unit(one.unit()));
        case AT_LEAST ->
            say.at("evidence.at-least", figure(say, one.publishedMiddle()) + unit(one.unit()));
        case SAME -> say.at("evidence.same");
        default -> one.comparison().id();
      };
    }
    Numbers n = one.published();
    Double low = n.low();
    Double high = n.high();
    Double typical = n.typical();
    String range = low != null && high != null ? range(say, low, high) : "";
    String middle = typical == null ? "" : figure(say, typical);
    String both = middle.isEmpty() ? range : range.isEmpty() ? middle : middle + " (" + range + ")";
    return both + unit(one.unit());
  }

  static String estimate(Say say, Estimate e) {
    return e.low() == e.high()
        ? figure(say, e.typical())
        : figure(say, e.typical()) + " (" + range(say, e.low(), e.high()) + ")";
  }

  static String computed(Say say, Compared c) {
    String first = estimate(say, c.computed());
    Estimate second = c.second();
    return first
        + (second == null ? "" : " " + say.at("evidence.against", estimate(say, second)))
        + unit(c.asked());
  }

  static String verdict(Say say, Compared c) {
    String counts =
        switch (c.standing()) {
          case COUNTED, CALIBRATION -> "";
          case BY_CONSTRUCTION -> ", " + say.at("evidence.cannot-fail");
          case CONDITIONS_UNTOLD -> ", " + say.at("evidence.untold");
        };
    String verdict = say.at("evidence.verdict-" + slug(c.verdict()));
    return c.asked().comparison().interval()
        ? verdict + counts
        : verdict + ", " + say.at("evidence.holds-in", percent(c.holdsShare())) + counts;
  }

  static String condition(Say say, Condition c) {
    String range = c.low() == c.high() ? figure(say, c.typical()) : range(say, c.low(), c.high());
    return c.kind().label() + " " + range + unit(c.kind().unit());
  }

  static String conditions(Say say, SetUp setUp, boolean told) {
    return setUp.ordered().stream()
        .filter(c -> c.told() == told)
        .map(c -> condition(say, c))
        .collect(Collectors.joining(", "));
  }

  static String percent(double share) {
    return Double.isNaN(share) ? "-" : Math.round(100 * share) + " %";
  }

  static String family(Say say, Family family) {
    return say.at("evidence.family-" + slug(family));
  }

  private static String slug(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static String range(Say say, double low, double high) {
    return say.at("reference.range", figure(say, low), figure(say, high));
  }

  /** "a factor of 40" or "14 K". */
  static String width(Say say, Family family, double width) {
    return Double.isNaN(width)
        ? "-"
        : family.logarithmic()
            ? say.at("evidence.factor", figure(say, width))
            : figure(say, width) + " K";
  }

  /** "covered 39 of 48 left-out figures, 14 studies", with what it is worth. */
  static String covered(Say say, Coverage c) {
    String counts = say.at("evidence.covered", c.covered(), c.figures(), c.studies());
    return c.figures() == 0
        ? counts
        : say.at(
            "evidence.covered-share",
            counts,
            percent(c.share()),
            percent(c.binomial().low()),
            percent(c.binomial().high()));
  }

  /** What a coverage comes to; never more than it can bear. */
  static String judged(Say say, Coverage c) {
    if (!c.testable()) {
      return say.at("evidence.not-testable", Coverage.TESTABLE);
    }
    String covers =
        c.covers() ? "evidence.covers" : c.share() < 0.8 ? "evidence.too-few" : "evidence.too-many";
    boolean beats = c.score() < c.meanScore();
    return say.at(covers) + "; " + say.at(beats ? "evidence.better" : "evidence.no-better");
  }

  /** The closing sentences, whatever they come to. */
  static List<String> closing(Say say, EvidenceReport report) {
    Summary s = report.summary();
    List<String> said = new ArrayList<>();
    said.add(
        say.at(
            "evidence.closing-rows", s.met(), s.cases(), s.byStudy().size(), percent(s.share())));
    said.add(
        say.at(
            "evidence.closing-intervals",
            s.intervalsMet(),
            s.intervals(),
            percent(s.scatterShare()),
            s.directionsMet(),
            s.directions()));
    said.add(
        say.at(
            "evidence.closing-frozen",
            s.frozenMet(),
            s.frozen(),
            s.frozenMetInOneLaboratory(),
            s.byConstruction()));
    for (Coverage c : report.coverage()) {
      Family family = c.family();
      String name = family == null ? say.at("evidence.all-families") : family(say, family);
      String band =
          family == null || c.figures() == 0
              ? ""
              : ", " + say.at("evidence.median-band", width(say, family, c.medianWidth()));
      said.add(capital(name) + ": " + covered(say, c) + band + ": " + judged(say, c) + ".");
    }
    for (Conditioned c : report.conditioned()) {
      if (c.figures() > 0) {
        said.add(
            say.at(
                "evidence.closing-conditioned",
                capital(family(say, c.family())),
                c.covered(),
                c.figures(),
                c.studies(),
                width(say, c.family(), c.medianWidth())));
      }
    }
    said.add(
        say.at("evidence.closing-samples", percent(s.monteCarlo()), percent(s.monteCarloMedian())));
    return said;
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
