package kerfwright.quantity;

import java.util.function.Function;

/**
 * A quantity known as low, typical and high. What the three mean (spread of a study, class limits,
 * 5th to 95th percentile of samples) is said where the range is made.
 */
public record Range<T extends Comparable<T>>(T low, T typical, T high) {
  public Range {
    if (low.compareTo(typical) > 0 || typical.compareTo(high) > 0) {
      throw new IllegalArgumentException(
          "Range must be ordered low <= typical <= high, got "
              + low
              + ", "
              + typical
              + ", "
              + high);
    }
  }

  public static <T extends Comparable<T>> Range<T> exactly(T value) {
    return new Range<>(value, value, value);
  }

  public <U extends Comparable<U>> Range<U> map(Function<? super T, ? extends U> increasing) {
    return new Range<>(increasing.apply(low), increasing.apply(typical), increasing.apply(high));
  }

  public boolean isExact() {
    return low.compareTo(high) == 0;
  }
}
