package kerfwright.practice.learning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.casework.OwnPace.Factor;

/**
 * Learns the practice's own pace and wear from logged cuts, shrunk towards the literature.
 *
 * <p>Of cut i in material and kind g with an instrument that has u lives behind it,
 *
 * <p>y = ln(taken / literature) = m + a(g) + d(kind) u + e
 *
 * <table>
 *   <caption>Symbols; all distributions are normal</caption>
 *   <tr><td>m</td><td>-</td><td>the practice as a whole; mean 0, sd {@link #PRACTICE_SD}: 95 percent
 *       within a factor of two, as the plan states for its removal rates</td></tr>
 *   <tr><td>a(g)</td><td>-</td><td>a material and kind against the practice as a whole; mean 0, sd
 *       {@link #GROUP_SD} (project setting)</td></tr>
 *   <tr><td>d</td><td>-</td><td>wear factor less one: sharpness falls as exp(-u), so that cuts last
 *       longer by exp(w u) with a wear factor w; mean 0, sd {@link #WEAR_SD} (project
 *       setting)</td></tr>
 *   <tr><td>e</td><td>-</td><td>one cut against the next; its variance is that within groups, pooled
 *       with {@link #SCATTER_SD} counted as {@link #SCATTER_COUNT} cuts (project settings)</td></tr>
 * </table>
 *
 * <p>With the variances given the posterior is normal in closed form: mean (X'X/s2 + P)^-1 X'y/s2,
 * covariance (X'X/s2 + P)^-1, P the precisions above (Lindley DV, Smith AFM. J R Stat Soc B
 * 1972;34:1-41; from memory). Without wear it is the two-level shrinkage: a group's mean is pulled
 * to the practice's by its share of variance, the practice's to the literature. Intervals are 90
 * percent, and every factor stays within {@link Factor#BOUND}. Leaves out: who cut, learning over
 * time, and that variances are estimated, which makes intervals of few cuts slightly narrow.
 */
public final class PaceLearning {
  /** Standard deviation of the logarithm: ln 2 / 1.96. */
  static final double PRACTICE_SD = Math.log(2) / 1.96;

  static final double GROUP_SD = 0.2;
  static final double WEAR_SD = 0.5;
  static final double SCATTER_SD = 0.35;
  static final double SCATTER_COUNT = 10;
  private static final double FIVE_PERCENT = 1.6449;

  private final List<LoggedCut> cuts;
  private final Map<OwnPace.Where, Integer> groups = new LinkedHashMap<>();
  private final Map<InstrumentKind, Integer> kinds = new TreeMap<>();

  private PaceLearning(List<LoggedCut> believable) {
    this.cuts = believable;
    for (LoggedCut cut : believable) {
      groups.putIfAbsent(cut.where(), groups.size() + 1);
    }
    for (LoggedCut cut : believable) {
      if (cut.livesUsed() > 0) {
        kinds.putIfAbsent(cut.where().kind(), groups.size() + 1 + kinds.size());
      }
    }
  }

  /** What the cuts say; those hard to believe are set aside. */
  public static OwnPace from(List<LoggedCut> logged) {
    List<LoggedCut> believable = logged.stream().filter(LoggedCut::believable).toList();
    return believable.isEmpty() ? OwnPace.NONE : new PaceLearning(believable).learn();
  }

  private OwnPace learn() {
    int size = 1 + groups.size() + kinds.size();
    double variance = scatterVariance();
    double[][] precision = new double[size][size];
    double[] weighted = new double[size];
    precision[0][0] = 1 / (PRACTICE_SD * PRACTICE_SD);
    groups.values().forEach(g -> precision[g][g] = 1 / (GROUP_SD * GROUP_SD));
    kinds.values().forEach(k -> precision[k][k] = 1 / (WEAR_SD * WEAR_SD));
    for (LoggedCut cut : cuts) {
      double[] x = row(cut, size);
      for (int i = 0; i < size; i++) {
        if (x[i] != 0) {
          weighted[i] += x[i] * cut.logRatio() / variance;
          for (int j = 0; j < size; j++) {
            precision[i][j] += x[i] * x[j] / variance;
          }
        }
      }
    }
    Posterior posterior = Posterior.of(precision, weighted);
    Map<OwnPace.Where, Factor> times = new HashMap<>();
    groups.forEach(
        (where, g) -> {
          double sd = Math.sqrt(Math.max(0, posterior.varianceOfSum(0, g)));
          times.put(where, ofLog(posterior.mean(0) + posterior.mean(g), sd));
        });
    Map<InstrumentKind, Factor> wear = new HashMap<>();
    kinds.forEach(
        (kind, k) -> {
          double sd = Math.sqrt(posterior.variance(k));
          double typical = 1 + posterior.mean(k);
          wear.put(
              kind, new Factor(typical - FIVE_PERCENT * sd, typical, typical + FIVE_PERCENT * sd));
        });
    // where nothing was logged yet a group may lie off the practice as a whole
    double unseen = Math.sqrt(posterior.variance(0) + GROUP_SD * GROUP_SD);
    return new OwnPace(ofLog(posterior.mean(0), unseen), times, wear, cuts.size());
  }

  private double[] row(LoggedCut cut, int size) {
    double[] x = new double[size];
    x[0] = 1;
    x[groups.getOrDefault(cut.where(), 0)] = 1;
    Integer kind = kinds.get(cut.where().kind());
    if (kind != null) {
      x[kind] = cut.livesUsed();
    }
    return x;
  }

  private static Factor ofLog(double mean, double sd) {
    return new Factor(
        Math.exp(mean - FIVE_PERCENT * sd), Math.exp(mean), Math.exp(mean + FIVE_PERCENT * sd));
  }

  private double scatterVariance() {
    Map<OwnPace.Where, List<Double>> ratios = new HashMap<>();
    cuts.forEach(
        cut -> ratios.computeIfAbsent(cut.where(), any -> new ArrayList<>()).add(cut.logRatio()));
    double squares = 0;
    for (List<Double> of : ratios.values()) {
      double mean = of.stream().mapToDouble(Double::doubleValue).average().orElse(0);
      squares += of.stream().mapToDouble(one -> (one - mean) * (one - mean)).sum();
    }
    int free = cuts.size() - ratios.size();
    return (SCATTER_COUNT * SCATTER_SD * SCATTER_SD + squares) / (SCATTER_COUNT + free);
  }
}
