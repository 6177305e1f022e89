package kerfwright.app.web;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import kerfwright.app.input.Node;

/**
 * A tooth as people type it: 16 is FDI, #3 Universal (so is a letter for a primary tooth), UR6
 * Palmer.
 */
final class TypedTooth {
  private static final Pattern UNIVERSAL = Pattern.compile("#\\s*([0-9]{1,2}|[A-T])|([A-T])");
  private static final Pattern PALMER = Pattern.compile("[UL]\\s*[RL]\\s*[1-8A-E]");

  private TypedTooth() {}

  static Node node(String typed) {
    String text = typed.strip().toUpperCase(Locale.ROOT);
    if (UNIVERSAL.matcher(text).matches()) {
      return below("universal", text.replace("#", "").strip());
    }
    if (PALMER.matcher(text).matches()) {
      return below("palmer", text.replaceAll("\\s", ""));
    }
    return below("fdi", text.startsWith("FDI") ? text.substring(3).strip() : text);
  }

  private static Node below(String notation, String text) {
    Map<String, Node.Entry> entries = new LinkedHashMap<>();
    entries.put(notation, new Node.Entry(new Node.Scalar(text, Node.Scalar.Kind.TEXT, 0), 0));
    return new Node.Mapping(entries, 0);
  }
}
