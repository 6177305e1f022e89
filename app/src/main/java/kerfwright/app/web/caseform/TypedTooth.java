package kerfwright.app.web.caseform;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import kerfwright.app.input.Node;

/**
 * A tooth as people type it: #3 is Universal (so is a letter for a primary tooth), UR6 Palmer; a
 * bare number is FDI, or Universal where the form was shown in that notation.
 */
final class TypedTooth {
  private static final Pattern UNIVERSAL = Pattern.compile("#\\s*([0-9]{1,2}|[A-T])|([A-T])");
  private static final Pattern PALMER = Pattern.compile("[UL]\\s*[RL]\\s*[1-8A-E]");

  private TypedTooth() {}

  /** What was typed in the form, or else picked in it; picked teeth are FDI whatever is shown. */
  static Node node(CaseForm form) {
    String typed = form.value("tooth").strip();
    return typed.isEmpty()
        ? below("fdi", form.value("tooth_pick"))
        : node(typed, form.value("tooth_by"));
  }

  static Node node(String typed, String notation) {
    String text = typed.strip().toUpperCase(Locale.ROOT);
    if (notation.equals("universal") && text.matches("[0-9]{1,2}")) {
      return below("universal", text);
    }
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
