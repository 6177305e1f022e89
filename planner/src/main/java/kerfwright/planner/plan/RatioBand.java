package kerfwright.planner.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import kerfwright.quantity.Message;

/**
 * One instrument, speed or load against another in the same mouth and hand. What a laboratory is
 * off by cancels, so that the band is that within one.
 *
 * @param low 5th percentile
 * @param typical at typical values
 * @param high 95th percentile
 */
public record RatioBand(double low, double typical, double high) {
  private static final double Z95 = 1.6449;
  private static final double ALIKE = 1.25;

  public RatioBand {
    if (!(low > 0 && low <= typical && typical <= high)) {
      throw new IllegalArgumentException("ratio " + low + ", " + typical + ", " + high);
    }
  }

  /** From the standard deviation of its logarithm. */
  public static RatioBand of(double typical, double sd) {
    double factor = Math.exp(Z95 * sd);
    return new RatioBand(typical / factor, typical, typical * factor);
  }

  /** The other way round. */
  public RatioBand inverse() {
    return new RatioBand(1 / high, 1 / typical, 1 / low);
  }

  /** Whether the band leaves open which is the greater. */
  public boolean open() {
    return low <= 1 && high >= 1;
  }

  /**
   * Of a time over another, alike where the band leaves it open: "takes about 3 times as long, 2 to
   * 5".
   */
  public Message asLong() {
    return said("long", this);
  }

  /** Of a time over another, said of the quicker one: "about 3 times as fast, 2 to 5". */
  public Message asFast() {
    return said("fast", inverse());
  }

  private static Message said(String word, RatioBand band) {
    boolean alike = band.open() || band.typical < ALIKE && band.typical > 1 / ALIKE;
    return alike
        ? Message.of("figure.ratio-alike-" + word, figure(band.low), figure(band.high))
        : Message.of(
            "figure.ratio-" + word, figure(band.typical), figure(band.low), figure(band.high));
  }

  private static BigDecimal figure(double ratio) {
    BigDecimal rounded = BigDecimal.valueOf(ratio).round(new MathContext(ratio < 10 ? 1 : 2));
    return ratio < 3 && ratio >= 1
        ? BigDecimal.valueOf(Math.round(ratio * 2)).divide(BigDecimal.valueOf(2))
        : rounded;
  }
}
