package kerfwright.practice.day;

/**
 * One thing wrong with a day: where, what, and what was expected.
 *
 * @param field path of the field as a day file has it, like {@code appointments[3].end}
 * @param found what is wrong
 * @param expected what was expected instead
 */
public record DayFault(String field, String found, String expected) {
  @Override
  public String toString() {
    return field + ": " + found + "; expected " + expected;
  }
}
