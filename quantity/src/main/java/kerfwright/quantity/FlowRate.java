package kerfwright.quantity;

/**
 * A volume in a time: coolant delivered, or material removed.
 *
 * @param cubicMetresPerSecond cubic metres per second
 */
public record FlowRate(double cubicMetresPerSecond) implements Comparable<FlowRate> {
  public FlowRate {
    Check.notNegative("FlowRate", "cubicMetresPerSecond", cubicMetresPerSecond);
  }

  public static FlowRate ofMillilitresPerMinute(double millilitresPerMinute) {
    return new FlowRate(millilitresPerMinute * 1e-6 / 60.0);
  }

  public double millilitresPerMinute() {
    return cubicMetresPerSecond * 60.0 * 1e6;
  }

  @Override
  public int compareTo(FlowRate other) {
    return Double.compare(cubicMetresPerSecond, other.cubicMetresPerSecond);
  }
}
