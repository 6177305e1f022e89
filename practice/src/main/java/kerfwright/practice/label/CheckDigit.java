package kerfwright.practice.label;

/**
 * The check digit of GS1 numbers: from the right, digits before it weigh 3, 1, 3, ...; the digit
 * fills the sum up to a multiple of ten (GS1 General Specifications, check digit calculation).
 */
public final class CheckDigit {
  private CheckDigit() {}

  /** The check digit that belongs behind these digits. */
  public static char of(String digits) {
    int sum = 0;
    for (int i = 0; i < digits.length(); i++) {
      int digit = digits.charAt(digits.length() - 1 - i) - '0';
      sum += i % 2 == 0 ? 3 * digit : digit;
    }
    return (char) ('0' + (10 - sum % 10) % 10);
  }

  /** True where the last of these digits is the check digit of the others. */
  public static boolean holds(String number) {
    int last = number.length() - 1;
    return of(number.substring(0, last)) == number.charAt(last);
  }
}
