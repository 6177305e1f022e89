package kerfwright.validation;

import java.util.Locale;
import java.util.Map;

/** Prints nested maps of texts and numbers as JSON. */
final class Json {
  private Json() {}

  static String text(Map<?, ?> map) {
    return object(map, "");
  }

  private static String object(Map<?, ?> map, String indent) {
    StringBuilder out = new StringBuilder("{");
    String separator = "\n";
    for (Map.Entry<?, ?> entry : map.entrySet()) {
      out.append(separator).append(indent).append("  \"").append(entry.getKey()).append("\": ");
      Object value = entry.getValue();
      if (value instanceof Map<?, ?> inner) {
        out.append(object(inner, indent + "  "));
      } else if (value instanceof Double number) {
        out.append(String.format(Locale.ROOT, "%.4g", number));
      } else if (value instanceof Number) {
        out.append(value);
      } else {
        out.append('"').append(String.valueOf(value).replace("\"", "'")).append('"');
      }
      separator = ",\n";
    }
    return out.append("\n").append(indent).append("}").toString();
  }
}
