package kerfwright.quantity;

/** Key of an entry of the source register; "common-practice" where the trade gives no source. */
public record SourceKey(String key) implements Comparable<SourceKey> {
  /** A fact of the trade for which no source is known. */
  public static final SourceKey COMMON_PRACTICE = new SourceKey("common-practice");

  public SourceKey {
    if (!key.matches("[a-z0-9][a-z0-9.-]*")) {
      throw new IllegalArgumentException(
          "Source key must be lower-case letters, digits, dots and hyphens, got '" + key + "'");
    }
  }

  @Override
  public int compareTo(SourceKey other) {
    return key.compareTo(other.key);
  }

  @Override
  public String toString() {
    return key;
  }
}
