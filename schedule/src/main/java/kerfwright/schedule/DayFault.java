package kerfwright.schedule;

import java.util.Collection;
import java.util.List;

/**
 * One thing wrong with a day: where, what, and what was expected.
 *
 * @param field path of the field as a day file has it, like {@code appointments[3].end}
 * @param found what is wrong
 * @param expected what was expected instead
 * @param given the name given where it is not known; else empty
 * @param known the names known there
 */
public record DayFault(
    String field, String found, String expected, String given, List<String> known) {
  DayFault(String field, String found, String expected) {
    this(field, found, expected, "", List.of());
  }

  /** A type that stands nowhere among the stock. */
  static DayFault unknownType(String field, String type, Collection<String> known) {
    String found = "\"" + type + "\" is in no stock";
    return new DayFault(field, found, "a type listed under instruments", type, List.copyOf(known));
  }

  @Override
  public String toString() {
    return field + ": " + found + "; expected " + expected;
  }
}
