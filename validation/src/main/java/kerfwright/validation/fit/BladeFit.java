package kerfwright.validation.fit;

import kerfwright.catalogue.evidence.ConditionKind;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.planner.evidence.figure.Trial;
import kerfwright.planner.uncertainty.Draw;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * What the one calibration finding on carbide burs says of two constants: the rate of blades, which
 * the ploughing constant sets, and how fast their edges wear. One figure cannot fix two constants;
 * it gives the pairs that meet it.
 */
final class BladeFit {
  private final double rateM3PerS;
  private final double livesPerM3;
  private final double seconds;
  private final double wantedM3;
  private final double sunk;

  BladeFit(EvidenceCase mass) {
    Trial trial = Trial.typical(mass.first(), Draw.fixed(1, 1, 1, 1));
    rateM3PerS = trial.removalM3PerS();
    livesPerM3 = trial.livesPerM3();
    seconds = trial.of(ConditionKind.MINUTES) * 60;
    wantedM3 = mass.publishedMiddle() * 1e-3 / trial.work().densityKgPerM3();
    sunk = trial.cut().chipShare();
  }

  /** Volume of glass the finding tells, mm3. */
  double wantedMm3() {
    return wantedM3 * 1e9;
  }

  /** Volume the model cuts as it stands, mm3. */
  double computedMm3() {
    return volume(1, 1) * 1e9;
  }

  /** Volume it would cut with an edge that does not wear, mm3. */
  double unwornMm3() {
    return rateM3PerS * seconds * 1e9;
  }

  /** Share of the edge's work that lifts a chip, as the model stands. */
  double chipShare() {
    return sunk;
  }

  /** Factor on the rate of blades that meets the finding with wear changed by a factor. */
  double rateFactor(double wearFactor) {
    return Math.exp(
        new BrentSolver(1e-6, 1e-9)
            .solve(200, log -> Math.log(volume(Math.exp(log), wearFactor) / wantedM3), -10, 200));
  }

  private double volume(double rateFactor, double wearFactor) {
    double wear = livesPerM3 * wearFactor;
    return wear <= 0
        ? rateM3PerS * rateFactor * seconds
        : Math.log1p(rateM3PerS * rateFactor * seconds * wear) / wear;
  }
}
