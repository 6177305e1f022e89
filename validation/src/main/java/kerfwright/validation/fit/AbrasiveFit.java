package kerfwright.validation.fit;

import java.util.Random;
import kerfwright.catalogue.evidence.ConditionKind;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.physics.cutting.CrackThreshold;
import kerfwright.physics.cutting.CutResult;
import kerfwright.planner.evidence.Comparing;
import kerfwright.planner.evidence.figure.Trial;
import kerfwright.planner.uncertainty.Draw;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * Fits the whole-contact constant of abrasive cutting: by which factor the rate must change for the
 * model to meet a calibration finding. One factor serves both sources only if theirs agree.
 */
final class AbrasiveFit {
  private static final double LEAST = 1e-4;
  private static final double MOST = 1e5;

  private AbrasiveFit() {}

  /** The factor on the constant that meets one finding, over the assumed conditions. */
  static Fitted factor(EvidenceCase one, int redraws, long seed) {
    Random random = new Random(seed);
    double[] factors = new double[redraws];
    for (int i = 0; i < redraws; i++) {
      double[] shares = random.doubles(ConditionKind.values().length).toArray();
      factors[i] = solve(one, shares);
    }
    java.util.Arrays.sort(factors);
    int cut = (int) Math.round(0.05 * (redraws - 1));
    return new Fitted(factors[cut], solve(one, new double[0]), factors[redraws - 1 - cut]);
  }

  private static double solve(EvidenceCase one, double[] shares) {
    double wanted = Math.log(one.publishedMiddle());
    double logFactor =
        new BrentSolver(1e-6)
            .solve(
                200,
                logs -> Math.log(figure(one, shares, Math.exp(logs))) - wanted,
                Math.log(LEAST),
                Math.log(MOST));
    Trial trial = trial(one, shares, 1);
    return beforeLoading(Math.exp(logFactor), trial.cut().cleanShare());
  }

  private static double figure(EvidenceCase one, double[] shares, double factor) {
    return Comparing.figure(one, trial(one, shares, factor));
  }

  private static Trial trial(EvidenceCase one, double[] shares, double factor) {
    Draw draw = Draw.fixed(factor, 1, 1, 1);
    return shares.length == 0
        ? Trial.typical(one.first(), draw)
        : Trial.drawn(one.first(), draw, kind -> shares[kind.ordinal()]);
  }

  /**
   * The constant acts before chips load the instrument: with a clean share c = 1/(1 + t), t
   * proportional to the rate, a factor f on the loaded rate needs f c / (1 - f (1 - c)) on the
   * constant; infinite where loading forbids the rate.
   */
  static double beforeLoading(double factor, double cleanShare) {
    double left = 1 - factor * (1 - cleanShare);
    return left > 0 ? factor * cleanShare / left : Double.POSITIVE_INFINITY;
  }

  /**
   * How fast the second work is cut against the first if grains only cracked it, or only ploughed
   * it, both at typical conditions: between the two lies all that the crack volume can do.
   */
  static double[] bounds(EvidenceCase first, EvidenceCase second) {
    return new double[] {cracking(second) / cracking(first), ploughing(second) / ploughing(first)};
  }

  private static double cracking(EvidenceCase one) {
    Trial trial = trial(one, new double[0], 1);
    CutResult cut = trial.cut();
    double x = Math.sqrt(2 * CrackThreshold.loadN(trial.work()) / cut.unitLoadN());
    double cracked = cut.unitLoadN() * (x * x / 2 + x + 1);
    return CrackThreshold.crackVolumePerLengthM2(trial.work(), cracked)
        / cracked
        * trial.point().loadN()
        * cut.brittleShare()
        * trial.point().rimSpeedMPerS();
  }

  private static double ploughing(EvidenceCase one) {
    Trial trial = trial(one, new double[0], 1);
    CutResult cut = trial.cut();
    return cut.chipShare()
        * trial.point().loadN()
        * (1 - cut.brittleShare())
        / trial.work().hardnessPa()
        * trial.point().rimSpeedMPerS();
  }

  /** Published rate of the second over the first, mm3/min both. */
  static double publishedRatio(EvidenceCase massRate, EvidenceCase volumeRate) {
    double densityMgPerMm3 = trial(massRate, new double[0], 1).work().densityKgPerM3() * 1e-3;
    return volumeRate.publishedMiddle() * 60 / (massRate.publishedMiddle() / densityMgPerMm3);
  }
}
