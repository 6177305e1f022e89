package kerfwright.validation.fit;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import kerfwright.catalogue.evidence.ConditionKind;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.planner.evidence.Comparing;
import kerfwright.planner.evidence.figure.Trial;
import kerfwright.planner.heat.HeatInputs;
import kerfwright.planner.uncertainty.Draw;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DiagonalMatrix;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * Fits the share of heat that enters the tooth and the heat transfer of the spray to the
 * temperatures at the pulp of the calibration sources, by least squares (Levenberg and Marquardt)
 * on the logarithms of the two factors. Each source weighs the same, however many rows it has.
 *
 * <p>The papers' conditions are assumed to a large part, so the interval is not that of the
 * residuals: the fit is done again over conditions drawn from their ranges.
 */
final class HeatShareFit {
  private static final double STEP = 0.02;
  private static final double LEAST = Math.log(0.02);
  private static final double MOST = Math.log(50);

  private final List<EvidenceCase> cases;
  private final double[] weights;
  private final boolean sprayToo;

  /** A fit of the share alone, or of the spray with it. */
  HeatShareFit(List<EvidenceCase> cases, boolean sprayToo) {
    this.cases = cases;
    this.sprayToo = sprayToo;
    weights = new double[cases.size()];
    for (int i = 0; i < weights.length; i++) {
      Object source = cases.get(i).row().sources();
      weights[i] = 1.0 / cases.stream().filter(c -> c.row().sources().equals(source)).count();
    }
  }

  /** The two constants and how well they do. */
  record Result(Fitted heatShare, Fitted sprayWPerM2K, double rmsBeforeK, double rmsAfterK) {}

  Result fit(int redraws, long seed) {
    double[] best = fit(null);
    Random random = new Random(seed);
    double[] share = new double[redraws];
    double[] spray = new double[redraws];
    for (int i = 0; i < redraws; i++) {
      double[] shares = random.doubles(ConditionKind.values().length).toArray();
      double[] logs = fit(shares);
      share[i] = logs[0];
      spray[i] = sprayToo ? logs[1] : 0;
    }
    HeatInputs typical = HeatInputs.TYPICAL;
    return new Result(
        scaled(typical.heatShare(), best[0], share),
        scaled(typical.sprayAt50MlWPerM2K(), sprayToo ? best[1] : 0, spray),
        rms(new double[2]),
        rms(best));
  }

  private static Fitted scaled(double typical, double best, double[] logs) {
    double[] sorted = logs.clone();
    Arrays.sort(sorted);
    int cut = (int) Math.round(0.05 * (sorted.length - 1));
    return new Fitted(
        typical * Math.exp(sorted[cut]),
        typical * Math.exp(best),
        typical * Math.exp(sorted[sorted.length - 1 - cut]));
  }

  private double[] model(RealVector logs, double[] shares) {
    double heat = Math.exp(Math.max(LEAST, Math.min(MOST, logs.getEntry(0))));
    double spray = sprayToo ? Math.exp(Math.max(LEAST, Math.min(MOST, logs.getEntry(1)))) : 1;
    Draw draw = Draw.fixed(1, 1, heat, spray);
    double[] values = new double[cases.size()];
    for (int i = 0; i < values.length; i++) {
      EvidenceCase one = cases.get(i);
      values[i] =
          shares.length == 0
              ? Comparing.figure(one, one.first(), draw)
              : Comparing.figure(
                  one, Trial.drawn(one.first(), draw, kind -> shares[kind.ordinal()]));
    }
    return values;
  }

  private double[] fit(double @org.jspecify.annotations.Nullable [] drawn) {
    double[] shares = drawn == null ? new double[0] : drawn;
    Optimum found =
        new LevenbergMarquardtOptimizer()
            .optimize(
                new LeastSquaresBuilder()
                    .start(new double[sprayToo ? 2 : 1])
                    .model(point -> withSlopes(point, shares))
                    .target(cases.stream().mapToDouble(EvidenceCase::publishedMiddle).toArray())
                    .weight(new DiagonalMatrix(weights))
                    .checker((i, a, b) -> a.getPoint().getDistance(b.getPoint()) < 1e-4)
                    .lazyEvaluation(false)
                    .maxEvaluations(200)
                    .maxIterations(40)
                    .build());
    double[] logs = found.getPoint().toArray();
    for (int i = 0; i < logs.length; i++) {
      logs[i] = Math.max(LEAST, Math.min(MOST, logs[i]));
    }
    return logs;
  }

  private Pair<RealVector, RealMatrix> withSlopes(RealVector point, double[] shares) {
    double[] here = model(point, shares);
    double[][] slopes = new double[here.length][point.getDimension()];
    for (int p = 0; p < point.getDimension(); p++) {
      RealVector moved = point.copy();
      moved.addToEntry(p, STEP);
      double[] there = model(moved, shares);
      for (int i = 0; i < here.length; i++) {
        slopes[i][p] = (there[i] - here[i]) / STEP;
      }
    }
    return new Pair<>(new ArrayRealVector(here), new Array2DRowRealMatrix(slopes));
  }

  private double rms(double[] logs) {
    double[] values = model(new ArrayRealVector(logs), new double[0]);
    double sum = 0;
    double weight = 0;
    for (int i = 0; i < values.length; i++) {
      double miss = values[i] - cases.get(i).publishedMiddle();
      sum += weights[i] * miss * miss;
      weight += weights[i];
    }
    return Math.sqrt(sum / weight);
  }
}
