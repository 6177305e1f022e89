package kerfwright.physics.shaft;

/**
 * Exact first frequencies of cantilevers for the tests, by routes the product does not take: the
 * characteristic equation of a uniform bar with a tip mass, and transfer matrices of
 * Euler-Bernoulli steps.
 */
final class CantileverExact {
  private CantileverExact() {}

  /** b^2 of mode number, with tip mass over bar mass mu. */
  static double uniformSquare(double mu, int mode) {
    double step = 1e-3;
    int found = 0;
    for (double b = step; b < 20; b += step) {
      if (characteristic(mu, b) * characteristic(mu, b + step) <= 0 && ++found == mode) {
        double root = bisect(mu, b, b + step);
        return root * root;
      }
    }
    throw new IllegalStateException("no root");
  }

  private static double characteristic(double mu, double b) {
    return 1
        + Math.cos(b) * Math.cosh(b)
        - mu * b * (Math.sin(b) * Math.cosh(b) - Math.cos(b) * Math.sinh(b));
  }

  private static double bisect(double mu, double low, double high) {
    for (int i = 0; i < 100; i++) {
      double middle = (low + high) / 2;
      if (characteristic(mu, low) * characteristic(mu, middle) <= 0) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return (low + high) / 2;
  }

  /** First frequency of a stepped shaft, turns a second. */
  static double steppedPerS(OverhungShaft s) {
    double guess = s.firstWhirlPerS();
    double low = 0.5 * guess;
    double signLow = Math.signum(determinant(s, low));
    double high = low;
    while (Math.signum(determinant(s, high)) == signLow) {
      high *= 1.002;
    }
    low = high / 1.002;
    for (int i = 0; i < 80; i++) {
      double middle = (low + high) / 2;
      if (Math.signum(determinant(s, middle)) == signLow) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** Bending moment and shear balance at the tip for the two free constants at the clamp. */
  private static double determinant(OverhungShaft s, double turnsPerS) {
    double omega = 2 * Math.PI * turnsPerS;
    double[] one = {0, 0, 1, 0};
    double[] two = {0, 0, 0, 1};
    double stiffScale = rigidity(s, s.shankDiameterM());
    for (double[] state : new double[][] {one, two}) {
      step(s, state, s.shankLengthM(), s.shankDiameterM(), omega, stiffScale);
      step(s, state, s.neckLengthM(), s.neckDiameterM(), omega, stiffScale);
    }
    double inertia = s.headMassKg() * omega * omega / stiffScale;
    // free tip: moment zero, shear V = EI w''' = -M_h omega^2 w
    return one[2] * (two[3] + inertia * two[0]) - two[2] * (one[3] + inertia * one[0]);
  }

  /** State (w, w', EI w'', EI w''') with the last two over stiffScale, through a uniform step. */
  private static void step(
      OverhungShaft s, double[] y, double length, double diameter, double omega, double scale) {
    if (length <= 0) {
      return;
    }
    double ei = rigidity(s, diameter);
    double line = s.densityKgPerM3() * Math.PI / 4 * diameter * diameter;
    double k = Math.pow(line * omega * omega / ei, 0.25);
    double x = k * length;
    double c0 = (Math.cosh(x) + Math.cos(x)) / 2;
    double c1 = (Math.sinh(x) + Math.sin(x)) / (2 * k);
    double c2 = (Math.cosh(x) - Math.cos(x)) / (2 * k * k);
    double c3 = (Math.sinh(x) - Math.sin(x)) / (2 * k * k * k);
    double k4 = k * k * k * k;
    double m = y[2] * scale / ei;
    double v = y[3] * scale / ei;
    double w0 = c0 * y[0] + c1 * y[1] + c2 * m + c3 * v;
    double w1 = k4 * c3 * y[0] + c0 * y[1] + c1 * m + c2 * v;
    double w2 = k4 * c2 * y[0] + k4 * c3 * y[1] + c0 * m + c1 * v;
    double w3 = k4 * c1 * y[0] + k4 * c2 * y[1] + k4 * c3 * m + c0 * v;
    y[0] = w0;
    y[1] = w1;
    y[2] = w2 * ei / scale;
    y[3] = w3 * ei / scale;
  }

  private static double rigidity(OverhungShaft s, double diameter) {
    return s.youngPa() * Math.PI * Math.pow(diameter, 4) / 64;
  }
}
