package kerfwright.planner.evidence;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kerfwright.catalogue.evidence.CaseLists;
import kerfwright.catalogue.evidence.EvidenceCase;

/**
 * What the comparison comes to.
 *
 * @param intervals counted figures compared with an interval
 * @param intervalsMet those inside
 * @param directions counted directions, rankings and bounds
 * @param directionsMet those right
 * @param byStudy counted cases by study; a study counts once
 * @param frozen cases of the frozen list
 * @param frozenMet those met
 * @param frozenMetInOneLaboratory those met by the scatter within one laboratory alone, as the list
 *     was counted when it was frozen
 * @param byConstruction cases of the frozen list that cannot fail
 * @param medianFactor median width of the intervals of rates and their ratios, as a factor
 * @param rates how many those are
 * @param medianKelvin median width of the intervals of pulp rises, K
 * @param rises how many those are
 * @param monteCarlo greatest standard error of an interval's end from the number of samples, as a
 *     share of its width
 * @param monteCarloMedian the median of these
 */
public record Summary(
    int intervals,
    int intervalsMet,
    int directions,
    int directionsMet,
    List<Study> byStudy,
    int frozen,
    int frozenMet,
    int frozenMetInOneLaboratory,
    int byConstruction,
    double medianFactor,
    int rates,
    double medianKelvin,
    int rises,
    double monteCarlo,
    double monteCarloMedian) {

  public Summary {
    byStudy = List.copyOf(byStudy);
  }

  /**
   * One study.
   *
   * @param key its source
   * @param cases its counted cases
   * @param met those met
   * @param scatterInside share of its published scatter inside the intervals, directions counted as
   *     all or nothing
   */
  public record Study(String key, int cases, int met, double scatterInside) {
    public double share() {
      return (double) met / cases;
    }
  }

  static Summary of(List<Compared> all) {
    List<Compared> counted = all.stream().filter(c -> c.standing() == Standing.COUNTED).toList();
    List<Compared> intervals =
        counted.stream().filter(c -> c.asked().comparison().interval()).toList();
    List<Compared> directions =
        counted.stream().filter(c -> !c.asked().comparison().interval()).toList();
    List<Compared> frozen =
        all.stream().filter(c -> CaseLists.packaged().frozen().contains(c.asked().id())).toList();
    double[] factors =
        intervals.stream()
            .filter(c -> c.asked().figure() == EvidenceCase.Figure.REMOVAL)
            .mapToDouble(Compared::widthFactor)
            .sorted()
            .toArray();
    double[] kelvins =
        intervals.stream()
            .filter(c -> c.asked().figure() == EvidenceCase.Figure.PULP_RISE)
            .mapToDouble(Compared::width)
            .sorted()
            .toArray();
    return new Summary(
        intervals.size(),
        met(intervals),
        directions.size(),
        met(directions),
        studies(counted),
        frozen.size(),
        met(frozen),
        (int) frozen.stream().filter(Compared::metInOneLaboratory).count(),
        (int) frozen.stream().filter(c -> c.standing() == Standing.BY_CONSTRUCTION).count(),
        median(factors),
        factors.length,
        median(kelvins),
        kelvins.length,
        all.stream().mapToDouble(Compared::monteCarlo).max().orElse(0),
        median(all.stream().mapToDouble(Compared::monteCarlo).sorted().toArray()));
  }

  private static List<Study> studies(List<Compared> counted) {
    Map<String, List<Compared>> byStudy =
        counted.stream()
            .collect(
                Collectors.groupingBy(Compared::study, LinkedHashMap::new, Collectors.toList()));
    return byStudy.entrySet().stream()
        .map(
            e ->
                new Study(
                    e.getKey(),
                    e.getValue().size(),
                    met(e.getValue()),
                    e.getValue().stream().mapToDouble(Summary::scatter).average().orElse(0)))
        .toList();
  }

  private static double scatter(Compared c) {
    return c.asked().comparison().interval() ? c.holdsShare() : c.verdict().met() ? 1 : 0;
  }

  private static int met(Collection<Compared> cases) {
    return (int) cases.stream().filter(c -> c.verdict().met()).count();
  }

  /** Of sorted values; NaN of none. */
  static double median(double[] sorted) {
    int n = sorted.length;
    return n == 0 ? Double.NaN : (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
  }

  public int cases() {
    return intervals + directions;
  }

  public int met() {
    return intervalsMet + directionsMet;
  }

  /** Share met, each study counted once however many rows it has. */
  public double share() {
    return byStudy.stream().mapToDouble(Study::share).average().orElse(Double.NaN);
  }

  /** The same for the published scatter inside the intervals. */
  public double scatterShare() {
    return byStudy.stream().mapToDouble(Study::scatterInside).average().orElse(Double.NaN);
  }
}
