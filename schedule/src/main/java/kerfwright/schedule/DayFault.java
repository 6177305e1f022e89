package kerfwright.schedule;

import java.util.Collection;
import java.util.List;

/**
 * One thing wrong with a day: where and what. Its words are those of whoever shows it.
 *
 * @param field path of the field as a day file has it, like {@code appointments[3].end}
 * @param code what is wrong: stable, lower-case with hyphens
 * @param values what stands there and what was expected: names and whole numbers
 * @param known the names known there, where a name is not; else empty
 */
public record DayFault(String field, String code, List<Object> values, List<String> known) {
  DayFault(String field, String code, Object... values) {
    this(field, code, List.of(values), List.of());
  }

  /** A type that stands nowhere among the stock. */
  static DayFault unknownType(String field, String type, Collection<String> known) {
    return new DayFault(field, "unknown-type", List.of(type), List.copyOf(known));
  }

  @Override
  public String toString() {
    return field + ": " + code + " " + values;
  }
}
