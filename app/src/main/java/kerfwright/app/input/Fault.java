package kerfwright.app.input;

import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
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
 */
public record Fault(
    String origin, int line, String field, Message message, @Nullable String nearest) {
  private static final Say ENGLISH = Say.in(Language.ENGLISH);

  /** A fault of what no form shows, in English. */
  public Fault(String origin, int line, String field, String problem, @Nullable String nearest) {
    this(origin, line, field, Message.of("fault.plain", problem), nearest);
  }

  /** What is wrong, in English. */
  public String problem() {
    return ENGLISH.of(message);
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
    return text.append(sentence(ENGLISH)).toString();
  }
}
