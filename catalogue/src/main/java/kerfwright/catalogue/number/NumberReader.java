package kerfwright.catalogue.number;

/** Reads the digits of a number in one pass, without making anything but the number. */
final class NumberReader {
  private NumberReader() {}

  static IsoNumber read(String text) {
    long value = 0;
    int digits = 0;
    int separators = 0;
    boolean mark = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= '0' && c <= '9') {
        if (separators > 0 && digits > 0 && digits % 3 != 0) {
          throw new MalformedNumberException(
              text,
              i,
              "a separator after digit " + digits,
              "separators only between groups of three",
              "number-separator",
              digits);
        }
        separators = 0;
        mark = false;
        digits++;
        if (digits <= 18) {
          value = 10 * value + (c - '0');
        }
      } else if (isSpace(c)) {
        separators++;
      } else if (isMark(c) && !mark && digits > 0) {
        separators++;
        mark = true;
      } else {
        throw new MalformedNumberException(
            text,
            i + 1,
            named(c),
            isMark(c)
                ? "a digit 0 to 9; one separator between groups is enough"
                : "digits 0 to 9 only, in groups of three (separators: space, full stop, hyphen)",
            isMark(c) ? "number-mark" : "number-digits",
            named(c));
      }
    }
    if (mark) {
      throw new MalformedNumberException(
          text, text.length(), "a separator at the end", "a digit", "number-end", digits);
    }
    if (digits != 15 && digits != 18 && digits != 9) {
      throw new MalformedNumberException(
          text,
          0,
          digits + (digits == 1 ? " digit" : " digits"),
          "15 digits, 18 with the optional last group, or 9 in the short form (shape, characteristic,"
              + " size)",
          "number-length",
          digits);
    }
    return new IsoNumber(value, digits);
  }

  private static boolean isSpace(char c) {
    return c == ' ' || c == '\u00a0' || c == '\u202f' || c == '\u2009' || c == '\t';
  }

  private static boolean isMark(char c) {
    return c == '.' || c == '-' || c == '\u2010' || c == '\u2011' || c == '\u2013';
  }

  private static String named(char c) {
    return Character.isISOControl(c)
        ? String.format("control character U+%04X", (int) c)
        : "'" + c + "'";
  }
}
