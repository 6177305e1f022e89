package kerfwright.app.evidence;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
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
    String counts =
        switch (c.standing()) {
          case COUNTED, CALIBRATION -> "";
          case BY_CONSTRUCTION -> ", cannot fail: not counted";
          case CONDITIONS_UNTOLD -> ", load or time untold: not counted";
        };
    return c.asked().comparison().interval()
        ? c.verdict().label() + counts
        : c.verdict().label() + ", holds in " + percent(c.holdsShare()) + " of samples" + counts;
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

  static String percent(double share) {
    return Double.isNaN(share) ? "-" : Math.round(100 * share) + " %";
  }

  static String family(Family family) {
    return switch (family) {
      case ABRASIVE_RATE -> "rate of abrasive instruments";
      case BLADE_RATE -> "rate of blades";
      case WEAR -> "wear";
      case ROUGHNESS -> "roughness";
      case DRY_HEAT -> "heat, dry";
      case WET_HEAT -> "heat, with water";
    };
  }

  /** "a factor of 40" or "14 K". */
  static String width(Family family, double width) {
    return Double.isNaN(width)
        ? "-"
        : family.logarithmic() ? "a factor of " + figure(width) : figure(width) + " K";
  }

  /** "covered 39 of 48 left-out figures, 14 studies", with what it is worth. */
  static String covered(Coverage c) {
    String counts =
        String.format(
            Locale.ROOT,
            "covered %d of %d left-out figures, %d %s",
            c.covered(),
            c.figures(),
            c.studies(),
            c.studies() == 1 ? "study" : "studies");
    return c.figures() == 0
        ? counts
        : counts
            + String.format(
                Locale.ROOT,
                " (%s; 95 %% binomial interval %s to %s)",
                percent(c.share()),
                percent(c.binomial().low()),
                percent(c.binomial().high()));
  }

  /** What a coverage comes to; never more than it can bear. */
  static String judged(Coverage c) {
    if (!c.testable()) {
      return "not testable: fewer than " + Coverage.TESTABLE + " studies";
    }
    String covers =
        c.covers()
            ? "covers as it should"
            : c.share() < 0.8 ? "fails: covers too few" : "fails: too wide, covers too many";
    boolean beats = c.score() < c.meanScore();
    return covers
        + (beats
            ? "; better than the mean of the other studies"
            : "; fails: no better than the mean of the other studies");
  }

  /** The closing sentences, whatever they come to. */
  static List<String> closing(EvidenceReport report) {
    Summary s = report.summary();
    List<String> said = new ArrayList<>();
    said.add(
        String.format(
            Locale.ROOT,
            "Rows no constant rests on: %d of %d met, in %d studies. Each study counted once: %s.",
            s.met(),
            s.cases(),
            s.byStudy().size(),
            percent(s.share())));
    said.add(
        String.format(
            Locale.ROOT,
            "Of these, figures inside their interval: %d of %d (each study once, with its published"
                + " scatter: %s); directions, rankings and bounds right: %d of %d.",
            s.intervalsMet(),
            s.intervals(),
            percent(s.scatterShare()),
            s.directionsMet(),
            s.directions()));
    said.add(
        String.format(
            Locale.ROOT,
            "The frozen list: %d of %d met; %d of them when only the scatter within one laboratory is"
                + " allowed for, as the list was counted when it was frozen. %d of the list cannot"
                + " fail.",
            s.frozenMet(),
            s.frozen(),
            s.frozenMetInOneLaboratory(),
            s.byConstruction()));
    for (Coverage c : report.coverage()) {
      Family family = c.family();
      said.add(
          family == null
              ? "All families: " + covered(c) + ": " + judged(c) + "."
              : capital(family(family))
                  + ": "
                  + covered(c)
                  + (c.figures() == 0 ? "" : ", median band " + width(family, c.medianWidth()))
                  + ": "
                  + judged(c)
                  + ".");
    }
    for (Conditioned c : report.conditioned()) {
      if (c.figures() > 0) {
        said.add(
            String.format(
                Locale.ROOT,
                "%s, once the first half of a study's figures is known: covered %d of %d others, %d"
                    + " studies, median band %s.",
                capital(family(c.family())),
                c.covered(),
                c.figures(),
                c.studies(),
                width(c.family(), c.medianWidth())));
      }
    }
    said.add(
        String.format(
            Locale.ROOT,
            "The number of samples moves an end of an interval by %s of its width at the most"
                + " (standard error), by %s in half of the cases.",
            percent(s.monteCarlo()),
            percent(s.monteCarloMedian())));
    return said;
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
