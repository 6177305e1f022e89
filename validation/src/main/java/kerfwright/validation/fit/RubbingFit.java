package kerfwright.validation.fit;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import kerfwright.catalogue.evidence.ConditionKind;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.planner.evidence.figure.Trial;
import kerfwright.planner.uncertainty.Draw;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * Fits the force ratio of an edge that only rubs to how the pulp warms under burs of several blades
 * in one test: least squares on the logarithms of rises over the first one. A rise without water is
 * in proportion to the power, and the power at one load and speed to the force ratio, so neither
 * the share of heat nor the tooth takes part.
 */
final class RubbingFit {
  private static final double CUTTING = 0.6;

  private final List<EvidenceCase> cases;

  RubbingFit(List<EvidenceCase> cases) {
    this.cases = List.copyOf(cases);
  }

  Fitted fit(int redraws, long seed) {
    Random random = new Random(seed);
    double[] all = new double[redraws];
    for (int i = 0; i < redraws; i++) {
      all[i] = solve(random.doubles(ConditionKind.values().length).toArray());
    }
    Arrays.sort(all);
    int cut = (int) Math.round(0.05 * (redraws - 1));
    return new Fitted(all[cut], solve(new double[0]), all[redraws - 1 - cut]);
  }

  /** Rise over that of the first case: published, and with a ratio at typical conditions. */
  double[] rises(double rubbing) {
    double[] lifting = lifting(new double[0]);
    return Arrays.stream(lifting)
        .map(u -> force(rubbing, u) / force(rubbing, lifting[0]))
        .toArray();
  }

  double[] published() {
    double first = cases.get(0).publishedMiddle();
    return cases.stream().mapToDouble(c -> c.publishedMiddle() / first).toArray();
  }

  private static double force(double rubbing, double lifting) {
    return rubbing + (CUTTING - rubbing) * lifting;
  }

  private double[] lifting(double[] shares) {
    Draw draw = Draw.fixed(1, 1, 1, 1);
    return cases.stream()
        .map(
            c ->
                shares.length == 0
                    ? Trial.typical(c.first(), draw)
                    : Trial.drawn(c.first(), draw, kind -> shares[kind.ordinal()]))
        .mapToDouble(t -> t.cut().chipShare())
        .toArray();
  }

  private double solve(double[] shares) {
    double[] lifting = lifting(shares);
    double[] wanted = published();
    return new BrentOptimizer(1e-8, 1e-10)
        .optimize(
            new MaxEval(200),
            new UnivariateObjectiveFunction(
                rubbing -> {
                  double sum = 0;
                  for (int i = 1; i < wanted.length; i++) {
                    double miss =
                        Math.log(force(rubbing, lifting[i]) / force(rubbing, lifting[0]))
                            - Math.log(wanted[i]);
                    sum += miss * miss;
                  }
                  return sum;
                }),
            GoalType.MINIMIZE,
            new SearchInterval(0, CUTTING))
        .getPoint();
  }
}
