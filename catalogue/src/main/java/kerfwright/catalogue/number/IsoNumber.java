package kerfwright.catalogue.number;

import org.jspecify.annotations.Nullable;

/**
 * A number of ISO 6360 as written: fifteen digits in groups of three, eighteen with the optional
 * last group of diamond instruments, or the nine-digit short form (shape, characteristic, size).
 *
 * <p>Digits 1 to 3 name the material of the working part with its coating or bond, 4 to 6 the shank
 * and overall length, 7 to 9 the shape, 10 to 12 the characteristic, 13 to 15 the size, 16 to 18
 * are kept and not interpreted. Groups may be separated by a space or a full stop (JIS T 5501,
 * clauses 2 and 3); hyphens and no separator at all are accepted as well. The record holds the
 * digits and no meaning: any digits decode, and encoding gives the same digits back. What they
 * mean, or that it is unknown, is told by {@link #explain()}.
 *
 * @param value the digits as one whole number
 * @param length 9, 15 or 18
 */
public record IsoNumber(long value, int length) {
  private static final long[] POWERS = new long[19];

  static {
    POWERS[0] = 1;
    for (int i = 1; i < POWERS.length; i++) {
      POWERS[i] = 10 * POWERS[i - 1];
    }
  }

  public IsoNumber {
    if (length != 9 && length != 15 && length != 18) {
      throw new IllegalArgumentException("IsoNumber must have 9, 15 or 18 digits, got " + length);
    }
    if (value < 0 || value >= POWERS[length]) {
      throw new IllegalArgumentException("IsoNumber of " + length + " digits cannot hold " + value);
    }
  }

  /** Reads a number; what is none is refused with place, find and expectation. */
  public static IsoNumber parse(String text) {
    return NumberReader.read(text);
  }

  /** Fifteen digits from five groups of three. */
  public static IsoNumber of(
      String material, String shank, String shape, String characteristic, String size) {
    return parse(material + " " + shank + " " + shape + " " + characteristic + " " + size);
  }

  /** True for the nine-digit form, which leaves material and shank open. */
  public boolean shortForm() {
    return length == 9;
  }

  /** Digits 1 to 3, or null in the short form. */
  public @Nullable String material() {
    return shortForm() ? null : group(0);
  }

  /** Digits 4 to 6, or null in the short form. */
  public @Nullable String shank() {
    return shortForm() ? null : group(1);
  }

  /** Digits 7 to 9. */
  public String shape() {
    return group(shortForm() ? 0 : 2);
  }

  /** Digits 10 to 12. */
  public String characteristic() {
    return group(shortForm() ? 1 : 3);
  }

  /** Digits 13 to 15. */
  public String size() {
    return group(shortForm() ? 2 : 4);
  }

  /** Digits 16 to 18, or null where there are none. */
  public @Nullable String extension() {
    return length == 18 ? group(5) : null;
  }

  /** The number in groups of three, separated by a space. */
  public String encode() {
    char[] text = new char[length + length / 3 - 1];
    long rest = value;
    for (int i = text.length - 1; i >= 0; i--) {
      if (i % 4 == 3) {
        text[i] = ' ';
      } else {
        text[i] = (char) ('0' + rest % 10);
        rest /= 10;
      }
    }
    return new String(text);
  }

  /** The digits without separators. */
  public String digits() {
    char[] text = new char[length];
    long rest = value;
    for (int i = length - 1; i >= 0; i--) {
      text[i] = (char) ('0' + rest % 10);
      rest /= 10;
    }
    return new String(text);
  }

  /** What each group says, with its standing. */
  public NumberExplanation explain() {
    return NumberExplanation.of(this);
  }

  @Override
  public String toString() {
    return encode();
  }

  /** The group as a whole number from 0 to 999, counted from the first group of this form. */
  int groupValue(int index) {
    return (int) (value / POWERS[length - 3 * (index + 1)] % 1000);
  }

  private String group(int index) {
    int group = groupValue(index);
    return new String(
        new char[] {
          (char) ('0' + group / 100), (char) ('0' + group / 10 % 10), (char) ('0' + group % 10)
        });
  }
}
