package kerfwright.practice.label;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import kerfwright.quantity.Identified;

/**
 * What the practice's own labels carry: KFW, one letter for the kind, and the id in 26 signs of
 * base 32. The alphabet is the digits and the letters without I and O, which are misread, and Y and
 * Z, which change places between keyboards: a scanner set to the wrong one still types it right.
 *
 * @param kind of what
 * @param id its id
 */
public record OwnCode(Kind kind, UUID id) {
  private static final String PREFIX = "KFW";
  private static final String SIGNS = "0123456789ABCDEFGHJKLMNPQRSTUVWX";
  private static final int LENGTH = 26;

  /** Kinds of things with a label. */
  public enum Kind implements Identified {
    INSTRUMENT('A'),
    POUCH('P'),
    TRAY('T'),
    LOAD('L');

    private final char letter;

    Kind(char letter) {
      this.letter = letter;
    }
  }

  /** The text for the label, 30 signs. */
  public String text() {
    StringBuilder text = new StringBuilder(PREFIX).append(kind.letter);
    BigInteger number = number(id);
    for (int i = LENGTH - 1; i >= 0; i--) {
      text.append(SIGNS.charAt(number.shiftRight(5 * i).intValue() & 31));
    }
    return text.toString();
  }

  private static BigInteger number(UUID id) {
    return BigInteger.valueOf(id.getMostSignificantBits())
        .shiftLeft(64)
        .or(new BigInteger(Long.toUnsignedString(id.getLeastSignificantBits())))
        .and(BigInteger.ONE.shiftLeft(128).subtract(BigInteger.ONE));
  }

  /** Reads a scanned text; empty where it is no code of ours. Capitals do not matter. */
  public static Optional<OwnCode> read(String scanned) {
    String text = scanned.strip().toUpperCase(Locale.ROOT);
    if (text.startsWith("]D1")) {
      text = text.substring(3);
    }
    int start = PREFIX.length() + 1;
    if (!text.startsWith(PREFIX) || text.length() != start + LENGTH) {
      return Optional.empty();
    }
    BigInteger number = BigInteger.ZERO;
    for (char sign : text.substring(start).toCharArray()) {
      int value = SIGNS.indexOf(sign);
      if (value < 0) {
        return Optional.empty();
      }
      number = number.shiftLeft(5).or(BigInteger.valueOf(value));
    }
    if (number.bitLength() > 128) {
      return Optional.empty();
    }
    UUID id = new UUID(number.shiftRight(64).longValue(), number.longValue());
    char letter = text.charAt(PREFIX.length());
    return Arrays.stream(Kind.values())
        .filter(kind -> kind.letter == letter)
        .findFirst()
        .map(kind -> new OwnCode(kind, id));
  }
}
