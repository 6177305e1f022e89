package kerfwright.practice.learning;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kerfwright.catalogue.evidence.Discrepancies;
import kerfwright.catalogue.evidence.Discrepancy;
import kerfwright.catalogue.evidence.Family;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.casework.OwnPace.Factor;
import kerfwright.planner.uncertainty.OwnLevel;

/**
 * Learns the practice's own pace and wear from its cuts, measured on a block or logged at the
 * chair, shrunk towards the literature: the practice is one more laboratory.
 *
 * <p>Of cut i in material and kind g of a family f with an instrument that has u lives behind it,
 *
 * <p>y = ln(taken / literature) = b(f) + a(g) + d(kind) u + e
 *
 * <table>
 *   <caption>Symbols; all distributions are normal</caption>
 *   <tr><td>b</td><td>-</td><td>the practice in a family, abrasive instruments or blades; mean 0, as
 *       far off as published studies lie off the models ({@link OwnLevel#prior})</td></tr>
 *   <tr><td>a(g)</td><td>-</td><td>a material and kind against the others of the family; mean 0, sd
 *       that of figures within one published study</td></tr>
 *   <tr><td>d</td><td>-</td><td>wear factor less one: sharpness falls as exp(-u), so that cuts last
 *       longer by exp(w u) with a wear factor w; mean 0, sd {@link #WEAR_SD} (project
 *       setting)</td></tr>
 *   <tr><td>e</td><td>-</td><td>one cut against the next; its variance is that within groups, pooled
 *       with {@link #SCATTER_SD} counted as {@link #SCATTER_COUNT} cuts (project settings)</td></tr>
 * </table>
 *
 * <p>With the variances given the posterior is normal in closed form: mean (X'X/s2 + P)^-1 X'y/s2,
 * covariance (X'X/s2 + P)^-1, P the precisions above (Lindley DV, Smith AFM. J R Stat Soc B
 * 1972;34:1-41; from memory). Factors are told with the 90 percent interval of one more cut, and
 * stay within {@link Factor#BOUND}. Leaves out: who cut, learning over time, and that variances are
 * estimated, which makes intervals of few cuts slightly narrow. Diamond instruments tell nothing of
 * blades, and cuts tell nothing of heat, roughness or a limit.
 */
public final class PaceLearning {
  static final double WEAR_SD = 0.5;
  static final double SCATTER_SD = 0.35;
  static final double SCATTER_COUNT = 10;

  private final List<LoggedCut> cuts;
  private final Map<Family, Integer> families = new EnumMap<>(Family.class);
  private final Map<OwnPace.Where, Integer> groups = new LinkedHashMap<>();
  private final Map<InstrumentKind, Integer> kinds = new TreeMap<>();

  private PaceLearning(List<LoggedCut> believable) {
    this.cuts = believable;
    for (LoggedCut cut : believable) {
      families.putIfAbsent(family(cut.where()), families.size());
    }
    for (LoggedCut cut : believable) {
      groups.putIfAbsent(cut.where(), families.size() + groups.size());
    }
    for (LoggedCut cut : believable) {
      if (cut.livesUsed() > 0) {
        kinds.putIfAbsent(cut.where().kind(), families.size() + groups.size() + kinds.size());
      }
    }
  }

  /** What the cuts say; those hard to believe are set aside. */
  public static OwnPace from(List<LoggedCut> logged) {
    List<LoggedCut> believable = logged.stream().filter(LoggedCut::believable).toList();
    return believable.isEmpty() ? OwnPace.NONE : new PaceLearning(believable).learn();
  }

  /** One cut in any practice, by the literature alone. */
  public static Factor before(Family family) {
    Discrepancy d = Discrepancies.packaged().of(family);
    double level = OwnLevel.prior(d).sd();
    double variance = level * level + d.within() * d.within() + SCATTER_SD * SCATTER_SD;
    return ofLog(0, Math.sqrt(variance));
  }

  static Family family(OwnPace.Where where) {
    return Family.ofRate(where.kind().bladed());
  }

  private static double within(Family family) {
    return Discrepancies.packaged().of(family).within();
  }

  private OwnPace learn() {
    int size = families.size() + groups.size() + kinds.size();
    double variance = scatterVariance();
    double[][] precision = new double[size][size];
    double[] weighted = new double[size];
    families.forEach(
        (family, f) -> {
          double level = OwnLevel.prior(Discrepancies.packaged().of(family)).sd();
          precision[f][f] = 1 / (level * level);
        });
    groups.forEach(
        (where, g) -> precision[g][g] = 1 / (within(family(where)) * within(family(where))));
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
    Map<Family, Factor> elsewhere = new EnumMap<>(Family.class);
    families.forEach(
        (family, f) -> {
          // where nothing was cut yet a group may lie off the family
          double other = posterior.variance(f) + within(family) * within(family) + variance;
          elsewhere.put(family, ofLog(posterior.mean(f), Math.sqrt(other)));
        });
    Map<OwnPace.Where, Factor> times = new HashMap<>();
    groups.forEach(
        (where, g) -> {
          int f = families.getOrDefault(family(where), 0);
          double of = Math.max(0, posterior.varianceOfSum(f, g)) + variance;
          times.put(where, ofLog(posterior.mean(f) + posterior.mean(g), Math.sqrt(of)));
        });
    Map<InstrumentKind, Factor> wear = new HashMap<>();
    kinds.forEach(
        (kind, k) -> {
          double half = OwnLevel.Z95 * Math.sqrt(posterior.variance(k));
          double typical = 1 + posterior.mean(k);
          wear.put(kind, new Factor(typical - half, typical, typical + half));
        });
    return new OwnPace(elsewhere, times, wear, cuts.size());
  }

  private double[] row(LoggedCut cut, int size) {
    double[] x = new double[size];
    x[families.getOrDefault(family(cut.where()), 0)] = 1;
    x[groups.getOrDefault(cut.where(), 0)] = 1;
    Integer kind = kinds.get(cut.where().kind());
    if (kind != null) {
      x[kind] = cut.livesUsed();
    }
    return x;
  }

  private static Factor ofLog(double mean, double sd) {
    double half = OwnLevel.Z95 * sd;
    return new Factor(Math.exp(mean - half), Math.exp(mean), Math.exp(mean + half));
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
