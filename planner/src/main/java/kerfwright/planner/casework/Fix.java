package kerfwright.planner.casework;

import org.jspecify.annotations.Nullable;

/**
 * One line of a case to change.
 *
 * @param field name of the field in a case file
 * @param value what it is to hold; null where it is to be left out, so that the usual value stands
 */
public record Fix(String field, @Nullable String value) {
  static Fix leaveOut(String field) {
    return new Fix(field, null);
  }

  /** The line as it stands in a case file; a line to be left out begins with a minus. */
  public String line() {
    return value == null ? "-" + field : field + ": " + value;
  }
}
