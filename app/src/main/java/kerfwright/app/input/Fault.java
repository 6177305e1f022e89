package kerfwright.app.input;

import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.planner.casework.Fix;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/**
 * One thing wrong with what was handed in.
 *
 * @param origin the file, or another name for where it came from
 * @param line line in it, 0 where lines mean nothing
 * @param field path of the field, e.g. layers[1].thickness_mm; empty where none is meant
 * @param message what is wrong and what was expected, one sentence without its full stop
 * @param nearest the nearest valid name, or null
 * @param fix the one line to change, where that is known
 */
public record Fault(
    String origin,
    int line,
    String field,
    Message message,
    @Nullable String nearest,
    @Nullable Fix fix) {
  private static final Say ENGLISH = Say.in(Language.ENGLISH);

  /** A fault whose fix nobody can know. */
  public Fault(String origin, int line, String field, Message message, @Nullable String nearest) {
    this(origin, line, field, message, nearest, null);
  }

  /** A fault of what no form shows, in English. */
  public Fault(String origin, int line, String field, String problem, @Nullable String nearest) {
    this(origin, line, field, Message.of("fault.plain", problem), nearest);
  }

  /** What is wrong, in English. */
  public String problem() {
    return ENGLISH.of(message);
  }

  /** What kind of fault it is: stable, lower-case with hyphens. */
  public String code() {
    return message.key().replaceFirst("^[a-z]+\\.(clash-)?", "");
  }

  /** True where nothing was written, rather than something wrong. */
  public boolean missing() {
    return message.key().startsWith("fault.missing");
  }

  /** The sentence to show beside the field. */
  public String sentence(Say say) {
    String text = say.of(message);
    return nearest == null ? text : say.at("fault.nearest", text, nearest);
  }

  /** The sentence with what to write instead. */
  private String withFix() {
    String text = sentence(ENGLISH);
    if (fix == null) {
      return text;
    }
    return fix.value() == null
        ? ENGLISH.at("fault.fix-leave-out", text, fix.field())
        : ENGLISH.at("fault.fix-write", text, fix.line());
  }

  /** One line in English: file, line, field, what is wrong. */
  public String oneLine() {
    StringBuilder text = new StringBuilder(origin);
    if (line > 0) {
      text.append(':').append(line);
    }
    text.append(": ");
    if (!field.isEmpty()) {
      text.append(field).append(": ");
    }
    return text.append(withFix()).toString();
  }
}
