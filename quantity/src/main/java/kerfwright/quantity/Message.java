package kerfwright.quantity;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;

/**
 * Something to be said to people, without its words: the key of a text and the values that stand in
 * it. Who shows it has the texts, in the language people read.
 *
 * @param key key of the text, such as {@code finding.little-water}
 * @param values whole numbers, figures already rounded ({@link BigDecimal}), words no language
 *     changes such as ids ({@link String}), further messages, and lists of messages
 */
public record Message(String key, List<Object> values) {

  public Message {
    if (!key.matches("[a-z]+(\\.[a-z0-9]+(-[a-z0-9]+)*)+")) {
      throw new IllegalArgumentException("Not a key of a text: " + key);
    }
    values = List.copyOf(values);
    values.forEach(Message::check);
  }

  public static Message of(String key, Object... values) {
    return new Message(key, List.of(values));
  }

  /** Keys of this message and of all it holds. */
  public Stream<String> keys() {
    return Stream.concat(Stream.of(key), values.stream().flatMap(Message::keysOf));
  }

  private static Stream<String> keysOf(Object value) {
    if (value instanceof Message message) {
      return message.keys();
    }
    return value instanceof List<?> all ? all.stream().flatMap(Message::keysOf) : Stream.of();
  }

  private static void check(Object value) {
    boolean known =
        value instanceof String
            || value instanceof Integer
            || value instanceof BigDecimal
            || value instanceof Message
            || (value instanceof List<?> all && all.stream().allMatch(Message.class::isInstance));
    if (!known) {
      throw new IllegalArgumentException("A message cannot hold " + value.getClass());
    }
  }
}
