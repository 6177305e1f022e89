package kerfwright.app.input;

import org.jspecify.annotations.Nullable;

/**
 * One thing wrong with what was handed in.
 *
 * @param origin the file, or another name for where it came from
 * @param line line in it, 0 where lines mean nothing
 * @param field path of the field, e.g. layers[1].thickness_mm; empty where none is meant
 * @param problem what is wrong and what was expected, one sentence without its full stop
 * @param nearest the nearest valid name, or null
 */
public record Fault(
    String origin, int line, String field, String problem, @Nullable String nearest) {

  /** True where nothing was written, rather than something wrong. */
  public boolean missing() {
    return problem.startsWith("is missing");
  }

  /** The sentence to show beside the field. */
  public String sentence() {
    return problem + (nearest == null ? "" : "; did you mean " + nearest + "?");
  }

  /** One line: file, line, field, what is wrong. */
  public String oneLine() {
    StringBuilder text = new StringBuilder(origin);
    if (line > 0) {
      text.append(':').append(line);
    }
    text.append(": ");
    if (!field.isEmpty()) {
      text.append(field).append(": ");
    }
    return text.append(sentence()).toString();
  }
}
