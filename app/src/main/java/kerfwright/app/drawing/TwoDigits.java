package kerfwright.app.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import kerfwright.app.words.Say;

/** Figures of the models, which are good to an order of magnitude: two digits, never more. */
public final class TwoDigits {
  private TwoDigits() {}

  public static String of(Say say, double value) {
    if (value == 0) {
      return "0";
    }
    BigDecimal two = BigDecimal.valueOf(value).round(new MathContext(2)).stripTrailingZeros();
    return two.abs().doubleValue() >= 10_000
        ? say.whole(two.longValue())
        : say.figures(two.toPlainString());
  }
}
