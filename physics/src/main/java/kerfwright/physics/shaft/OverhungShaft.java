package kerfwright.physics.shaft;

/**
 * First whirl speed and stiffness of the part of an instrument that stands out of the chuck: a
 * stepped cantilever (shank, then neck) with the head as a mass at its end, Euler-Bernoulli.
 *
 * <p>Compliance at the tip by the unit-load integral of x^2/(E I) over the steps, k = 1/compliance;
 * first frequency by Dunkerley's formula, 1/w^2 = M_h/k + sum of the same for the mass of each step
 * at its own place: a lower bound, so on the safe side (1.5 percent below the exact value for a
 * uniform bar without a head, less with one, up to 9 percent for a thin neck with a light head).
 * n_cr = 60 w/(2 pi).
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>L_s, d_s</td><td>m</td><td>length and diameter of the shank outside the chuck</td></tr>
 *   <tr><td>L_n, d_n</td><td>m</td><td>length and diameter of the neck</td></tr>
 *   <tr><td>M_h</td><td>kg</td><td>mass of the head</td></tr>
 *   <tr><td>E, rho</td><td>Pa, kg/m3</td><td>of the shank steel</td></tr>
 * </table>
 *
 * <p>Valid for slender parts. Leaves out: turning inertia and length of the head, give of collet
 * and bearing (lowers it), gyroscopic stiffening (raises it), the support of the cut. Sources:
 * Thomson WT. Theory of Vibration with Applications, app. D.3; Dunkerley's formula, J Sound Vib
 * 1996;195:229-240.
 *
 * @param shankLengthM L_s
 * @param shankDiameterM d_s
 * @param neckLengthM L_n
 * @param neckDiameterM d_n
 * @param headMassKg M_h
 * @param youngPa E
 * @param densityKgPerM3 rho
 */
public record OverhungShaft(
    double shankLengthM,
    double shankDiameterM,
    double neckLengthM,
    double neckDiameterM,
    double headMassKg,
    double youngPa,
    double densityKgPerM3) {
  private static final int SLICES = 60;

  public OverhungShaft {
    if (!(shankLengthM >= 0) || !(neckLengthM >= 0) || !(shankLengthM + neckLengthM > 0)) {
      throw new IllegalArgumentException(
          "An overhung shaft needs a length above zero, got "
              + shankLengthM
              + " m of shank, "
              + neckLengthM
              + " m of neck");
    }
    if (!(shankDiameterM > 0) || !(neckDiameterM > 0) || !(headMassKg >= 0)) {
      throw new IllegalArgumentException(
          "An overhung shaft needs diameters above zero and a mass of zero or more, got "
              + shankDiameterM
              + " m, "
              + neckDiameterM
              + " m, "
              + headMassKg
              + " kg");
    }
    if (!(youngPa > 0) || !(densityKgPerM3 > 0)) {
      throw new IllegalArgumentException(
          "An overhung shaft needs stiffness and density above zero, got "
              + youngPa
              + " Pa, "
              + densityKgPerM3
              + " kg/m3");
    }
  }

  private double lengthM() {
    return shankLengthM + neckLengthM;
  }

  /** Sideways stiffness at the tip, N/m. */
  public double tipStiffnessNPerM() {
    return 1 / complianceMPerN(lengthM());
  }

  /** Deflection at z under a unit load at z: integral of (z - x)^2 / (E I(x)), m/N. */
  private double complianceMPerN(double z) {
    double inShank = Math.min(z, shankLengthM);
    double shank = (cube(z) - cube(z - inShank)) / (3 * youngPa * secondMomentM4(shankDiameterM));
    double neck =
        z > shankLengthM
            ? cube(z - shankLengthM) / (3 * youngPa * secondMomentM4(neckDiameterM))
            : 0;
    return shank + neck;
  }

  /** First whirl speed, turns a second; a lower bound. */
  public double firstWhirlPerS() {
    double inverseSquare = headMassKg * complianceMPerN(lengthM());
    inverseSquare += stepTerm(0, shankLengthM, shankDiameterM);
    inverseSquare += stepTerm(shankLengthM, lengthM(), neckDiameterM);
    return 1 / (2 * Math.PI * Math.sqrt(inverseSquare));
  }

  /** Sum of mass times compliance over a step, by the midpoint rule. */
  private double stepTerm(double fromM, double toM, double diameterM) {
    double slice = (toM - fromM) / SLICES;
    double massKg = densityKgPerM3 * Math.PI / 4 * diameterM * diameterM * slice;
    double sum = 0;
    for (int i = 0; i < SLICES; i++) {
      sum += massKg * complianceMPerN(fromM + (i + 0.5) * slice);
    }
    return sum;
  }

  private static double secondMomentM4(double diameterM) {
    return Math.PI * Math.pow(diameterM, 4) / 64;
  }

  private static double cube(double x) {
    return x * x * x;
  }
}
