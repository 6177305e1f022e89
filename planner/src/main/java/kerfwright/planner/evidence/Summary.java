package kerfwright.planner.evidence;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.catalogue.evidence.EvidenceRow;

/**
 * What the comparison comes to, over validation cases only.
 *
 * @param intervals figures compared with an interval
 * @param intervalsMet those inside
 * @param directions directions, rankings and bounds
 * @param directionsMet those right
 * @param medianFactor median width of the intervals of rates and their ratios, as a factor
 * @param rates how many those are
 * @param medianKelvin median width of the intervals of pulp rises, K
 * @param rises how many those are
 */
public record Summary(
    int intervals,
    int intervalsMet,
    int directions,
    int directionsMet,
    double medianFactor,
    int rates,
    double medianKelvin,
    int rises) {
  /** Wanted share of cases met. */
  public static final double WANTED_SHARE = 0.8;

  /** Wanted median width for rates. */
  public static final double WANTED_FACTOR = 4;

  /** Wanted median width for pulp rises, K. */
  public static final double WANTED_KELVIN = 6;

  static Summary of(List<Compared> all) {
    List<Compared> validation =
        all.stream().filter(c -> c.asked().row().role() == EvidenceRow.Role.VALIDATION).toList();
    List<Compared> intervals =
        validation.stream().filter(c -> c.asked().comparison().interval()).toList();
    List<Compared> directions =
        validation.stream().filter(c -> !c.asked().comparison().interval()).toList();
    double[] factors =
        intervals.stream().filter(is(Summary::rate)).mapToDouble(Compared::widthFactor).toArray();
    double[] kelvins =
        intervals.stream().filter(is(Summary::rise)).mapToDouble(Compared::width).toArray();
    return new Summary(
        intervals.size(),
        met(intervals),
        directions.size(),
        met(directions),
        median(factors),
        factors.length,
        median(kelvins),
        kelvins.length);
  }

  private static Predicate<Compared> is(Predicate<EvidenceCase.Figure> kind) {
    return c -> kind.test(c.asked().figure());
  }

  private static boolean rate(EvidenceCase.Figure figure) {
    return figure == EvidenceCase.Figure.REMOVAL;
  }

  private static boolean rise(EvidenceCase.Figure figure) {
    return figure == EvidenceCase.Figure.PULP_RISE;
  }

  private static int met(List<Compared> cases) {
    return (int) cases.stream().filter(c -> c.verdict().met()).count();
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int n = sorted.length;
    return n == 0 ? Double.NaN : (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
  }

  public int cases() {
    return intervals + directions;
  }

  public int met() {
    return intervalsMet + directionsMet;
  }

  /** Share of all validation cases met. */
  public double share() {
    return cases() == 0 ? Double.NaN : (double) met() / cases();
  }

  /** Share of validation figures inside their intervals, directions left out. */
  public double intervalShare() {
    return intervals == 0 ? Double.NaN : (double) intervalsMet / intervals;
  }
}
