package kerfwright.app.storage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Conditions that rows fulfil one and all, with the values for their {@code ?}. */
public final class Where {
  private final List<String> conditions = new ArrayList<>();
  private final List<@Nullable Object> values = new ArrayList<>();

  /** Adds a condition on a value, unless there is none to ask for. */
  public Where and(String condition, @Nullable Object value) {
    if (value != null) {
      conditions.add(condition);
      long places = condition.chars().filter(one -> one == '?').count();
      values.addAll(Collections.nCopies((int) places, value));
    }
    return this;
  }

  /** Adds that a column has a part, letters large or small; it is kept in small ones. */
  public Where has(String column, @Nullable String part) {
    return and(column + " LIKE ? ESCAPE '!'", part == null ? null : part(part));
  }

  /** What LIKE finds a part by that is written in small letters, with ! to escape. */
  public static String part(String text) {
    return "%" + text.toLowerCase(Locale.ROOT).replaceAll("([!%_])", "!$1") + "%";
  }

  public boolean isEmpty() {
    return conditions.isEmpty();
  }

  public String text() {
    return String.join(" AND ", conditions);
  }

  /** The values, and what else the statement asks for after them. */
  public @Nullable Object[] values(Object... more) {
    List<@Nullable Object> all = new ArrayList<>(values);
    Collections.addAll(all, more);
    return all.toArray();
  }
}
