package kerfwright.physics.heat;

import org.hipparchus.special.BesselJ;
import org.hipparchus.special.Erf;

/**
 * Closed forms of conduction the solver is held against. C&J: Carslaw HS, Jaeger JC, Conduction of
 * Heat in Solids, 2nd ed. 1959; section numbers from memory. theta is the temperature above the
 * start; SI units throughout.
 */
final class ClosedForms {
  private ClosedForms() {}

  static double ierfc(double u) {
    return Math.exp(-u * u) / Math.sqrt(Math.PI) - u * Erf.erfc(u);
  }

  /** exp(x^2) erfc(x), also where the factors by themselves overflow. */
  static double erfcx(double x) {
    if (x < 20) {
      return Math.exp(x * x) * Erf.erfc(x);
    }
    double s = 1 / (x * x);
    return (1 - s / 2 + 3 * s * s / 4 - 15 * s * s * s / 8) / (x * Math.sqrt(Math.PI));
  }

  /** C&J 2.5: half-space, surface held at 1. */
  static double heldSurface(double x, double alpha, double t) {
    return Erf.erfc(x / (2 * Math.sqrt(alpha * t)));
  }

  /** C&J 2.9: half-space, constant flux q. */
  static double constantFlux(double x, double q, double k, double alpha, double t) {
    double c = 2 * Math.sqrt(alpha * t);
    return t <= 0 ? 0 : q * c / k * ierfc(x / c);
  }

  /** C&J 2.7: half-space, surface washed by a coolant at 1. */
  static double washedSurface(double x, double h, double k, double alpha, double t) {
    double u = x / (2 * Math.sqrt(alpha * t));
    double b = h * Math.sqrt(alpha * t) / k;
    // exp(hx/k + b^2) erfc(u + b) = exp(-u^2) erfcx(u + b)
    return Erf.erfc(u) - Math.exp(-u * u) * erfcx(u + b);
  }

  /** C&J 3.3: slab, x = 0 held at 1, x = l insulated. */
  static double slabHeldInsulated(double x, double l, double alpha, double t) {
    double sum = 0;
    for (int n = 0; n < 400; n++) {
      double root = (2 * n + 1) * Math.PI / (2 * l);
      sum += 4 / ((2 * n + 1) * Math.PI) * Math.sin(root * x) * Math.exp(-alpha * root * root * t);
    }
    return 1 - sum;
  }

  /** C&J 3.4: slab, x = 0 held at 1, x = l held at 0. */
  static double slabHeldHeld(double x, double l, double alpha, double t) {
    double sum = 0;
    for (int n = 1; n < 400; n++) {
      double root = n * Math.PI / l;
      sum += 2 / (n * Math.PI) * Math.sin(root * x) * Math.exp(-alpha * root * root * t);
    }
    return 1 - x / l - sum;
  }

  /** C&J 3.8: slab, flux q at x = 0, x = l insulated. */
  static double slabFluxInsulated(double x, double q, double l, double k, double alpha, double t) {
    double xi = l - x;
    double sum = 0;
    for (int n = 1; n < 2000; n++) {
      double root = n * Math.PI / l;
      sum +=
          (n % 2 == 0 ? 1 : -1)
              / (double) (n * n)
              * Math.exp(-alpha * root * root * t)
              * Math.cos(root * xi);
    }
    return q * alpha * t / (k * l)
        + q * l / k * ((3 * xi * xi - l * l) / (6 * l * l) - 2 / (Math.PI * Math.PI) * sum);
  }

  /** Incropera 5.5: plane wall, x = 0 insulated, x = l washed by a coolant at 1. */
  static double slabInsulatedWashed(
      double x, double h, double l, double k, double alpha, double t) {
    double biot = h * l / k;
    double sum = 0;
    for (int n = 0; n < 200; n++) {
      double low = n * Math.PI;
      double high = low + Math.PI / 2 - 1e-13;
      for (int i = 0; i < 200; i++) {
        double mid = 0.5 * (low + high);
        if (mid * Math.tan(mid) < biot) {
          low = mid;
        } else {
          high = mid;
        }
      }
      double root = 0.5 * (low + high);
      sum +=
          4
              * Math.sin(root)
              / (2 * root + Math.sin(2 * root))
              * Math.exp(-root * root * alpha * t / (l * l))
              * Math.cos(root * x / l);
    }
    return 1 - sum;
  }

  /** C&J 12.8: layer of thickness l on a half-space, surface held at 1. */
  static double twoLayersHeld(
      double x, double l, double k1, double a1, double k2, double a2, double t) {
    double sigma = k2 * Math.sqrt(a1) / (k1 * Math.sqrt(a2));
    double beta = (sigma - 1) / (sigma + 1);
    double c = 2 * Math.sqrt(a1 * t);
    double sum = 0;
    double power = 1;
    for (int n = 0; n < 60; n++) {
      sum +=
          x <= l
              ? power * (Erf.erfc((2 * n * l + x) / c) - beta * Erf.erfc((2 * (n + 1) * l - x) / c))
              : 2
                  / (1 + sigma)
                  * power
                  * Erf.erfc(((2 * n + 1) * l + Math.sqrt(a1 / a2) * (x - l)) / c);
      power *= beta;
    }
    return sum;
  }

  /** The same layer under constant flux q, by images. */
  static double twoLayersFlux(
      double x, double q, double l, double k1, double a1, double k2, double a2, double t) {
    double sigma = k2 * Math.sqrt(a1) / (k1 * Math.sqrt(a2));
    double r = (1 - sigma) / (1 + sigma);
    double c = 2 * Math.sqrt(a1 * t);
    double sum = 0;
    double power = 1;
    for (int n = 0; n < 60; n++) {
      sum +=
          x <= l
              ? power * ierfc((2 * n * l + x) / c) + power * r * ierfc((2 * (n + 1) * l - x) / c)
              : 2
                  / (1 + sigma)
                  * power
                  * ierfc(((2 * n + 1) * l + Math.sqrt(a1 / a2) * (x - l)) / c);
      power *= r;
    }
    return q * c / k1 * sum;
  }

  /** C&J 10.7: surface receding at speed v and held at 1; x from the moving face. */
  static double recedingHeld(double x, double v, double alpha, double t) {
    double c = 2 * Math.sqrt(alpha * t);
    return 0.5 * (Erf.erfc((x + v * t) / c) + Math.exp(-v * x / alpha) * Erf.erfc((x - v * t) / c));
  }

  /** C&J 10.5: disc source of radius a on an insulated half-space, on the axis. */
  static double disc(double z, double a, double q, double k, double alpha, double t) {
    double c = 2 * Math.sqrt(alpha * t);
    return q * c / k * (ierfc(z / c) - ierfc(Math.sqrt(z * z + a * a) / c));
  }

  /** C&J 7.6: long cylinder of radius a, surface held at 1. */
  static double cylinderHeld(double r, double a, double alpha, double t) {
    BesselJ j0 = new BesselJ(0);
    BesselJ j1 = new BesselJ(1);
    double sum = 0;
    for (int n = 1; n <= 60; n++) {
      double root = bisect(u -> j0.value(u), (n - 0.5) * Math.PI - 0.5, n * Math.PI);
      sum +=
          Math.exp(-alpha * root * root * t / (a * a))
              * j0.value(root * r / a)
              / (root * j1.value(root));
    }
    return 1 - 2 * sum;
  }

  /** C&J 7.7: long cylinder, surface washed by a coolant at 1. */
  static double cylinderWashed(double r, double a, double h, double k, double alpha, double t) {
    BesselJ j0 = new BesselJ(0);
    BesselJ j1 = new BesselJ(1);
    double biot = h * a / k;
    double sum = 0;
    double previous = 0;
    for (int n = 1; n <= 60; n++) {
      double pole = bisect(u -> j0.value(u), (n - 0.5) * Math.PI - 0.5, n * Math.PI);
      double root = bisect(u -> biot * j0.value(u) - u * j1.value(u), previous + 1e-9, pole);
      double f0 = j0.value(root);
      double f1 = j1.value(root);
      sum +=
          2
              / root
              * f1
              / (f0 * f0 + f1 * f1)
              * Math.exp(-root * root * alpha * t / (a * a))
              * j0.value(root * r / a);
      previous = bisect(u -> j1.value(u), n * Math.PI + 0.1, (n + 0.5) * Math.PI);
    }
    return 1 - sum;
  }

  private static double bisect(java.util.function.DoubleUnaryOperator f, double from, double to) {
    double low = from;
    double high = to;
    boolean rising = f.applyAsDouble(low) < 0;
    for (int i = 0; i < 200; i++) {
      double mid = 0.5 * (low + high);
      if (f.applyAsDouble(mid) < 0 == rising) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return 0.5 * (low + high);
  }
}
