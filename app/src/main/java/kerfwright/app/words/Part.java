package kerfwright.app.words;

import java.text.FieldPosition;
import java.text.Format;
import java.text.ParsePosition;
import java.util.function.Function;

/** How one placeholder of a text is written; it is never read back. */
final class Part extends Format {
  private static final long serialVersionUID = 1L;

  @SuppressWarnings("serial") // never written out
  private final Function<Object, String> words;

  Part(Function<Object, String> words) {
    this.words = words;
  }

  @Override
  public StringBuffer format(Object value, StringBuffer to, FieldPosition at) {
    return to.append(words.apply(value));
  }

  @Override
  public Object parseObject(String text, ParsePosition at) {
    throw new UnsupportedOperationException("Texts are written, not read");
  }
}
