package kerfwright.quantity;

import java.math.BigDecimal;
import java.util.Locale;

/** Figures rounded as people read them; half is rounded up. */
public final class Rounded {
  private Rounded() {}

  /** So many decimals, written out also where they are zero. */
  public static BigDecimal places(double value, int places) {
    return new BigDecimal(String.format(Locale.ROOT, "%." + places + "f", value));
  }

  /** Two figures, at most three decimals, no exponent. */
  public static BigDecimal figure(double value) {
    double size = Math.abs(value);
    if (size < 5e-4) {
      return BigDecimal.ZERO;
    }
    if (size >= 100) {
      double step = Math.pow(10, Math.floor(Math.log10(size)) - 1);
      return places(Math.round(value / step) * step, 0);
    }
    return places(value, size >= 10 ? 0 : size >= 1 ? 1 : size >= 0.1 ? 2 : 3);
  }

  /** A share of one as whole per cent. */
  public static BigDecimal percent(double share) {
    return places(share * 100, 0);
  }
}
