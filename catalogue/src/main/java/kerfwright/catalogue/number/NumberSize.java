package kerfwright.catalogue.number;

import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What digits 13 to 15 say of the size.
 *
 * <p>For rotary instruments they are the largest head diameter in tenths of a millimetre (read).
 * For root-canal instruments the size is in hundredths (from memory). Where the number does not
 * tell which it is, both readings stand and none is chosen.
 *
 * @param rule which rule holds
 * @param tenths the reading in tenths of a millimetre
 * @param hundredths the reading in hundredths of a millimetre
 * @param basis standing of the rule
 */
public record NumberSize(Rule rule, Length tenths, Length hundredths, Basis basis) {
  /** Which reading holds. */
  public enum Rule {
    TENTHS,
    HUNDREDTHS,
    UNDECIDED
  }

  static NumberSize of(int digits, Rule rule) {
    return new NumberSize(
        rule,
        Length.ofMillimetres(digits / 10.0),
        Length.ofMillimetres(digits / 100.0),
        rule == Rule.TENTHS ? Basis.SEEN : Basis.FROM_MEMORY);
  }

  /** The size, or null where it is 000 or the number does not tell which rule holds. */
  public @Nullable Length length() {
    if (tenths.metres() == 0) {
      return null;
    }
    return switch (rule) {
      case TENTHS -> tenths;
      case HUNDREDTHS -> hundredths;
      case UNDECIDED -> null;
    };
  }
}
