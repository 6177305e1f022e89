package kerfwright.app.input;

import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.planner.casework.Contradiction.Fix;
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
  /** A fault whose fix nobody can know. */
  public Fault(String origin, int line, String field, Message message, @Nullable String nearest) {
    this(origin, line, field, message, nearest, null);
  }

  /** What is wrong, in English. */
  public String problem() {
    return Say.in(Language.ENGLISH).of(message);
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
    return say.of(withNearest());
  }

  /** One line: file, line, field, what is wrong and what to write instead. */
  public String in(Say say) {
    return say.of(placed());
  }

  /** The same, to be told within something else. */
  public Message placed() {
    String place = line > 0 ? origin + ":" + line : origin;
    return field.isEmpty()
        ? Message.of("fault.at", place, withFix())
        : Message.of("fault.at-field", place, field, withFix());
  }

  private Message withNearest() {
    return nearest == null ? message : Message.of("fault.nearest", message, nearest);
  }

  private Message withFix() {
    if (fix == null) {
      return withNearest();
    }
    return fix.value() == null
        ? Message.of("fault.fix-leave-out", withNearest(), fix.field())
        : Message.of("fault.fix-write", withNearest(), fix.line());
  }
}
