package kerfwright.app.chairside;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The fields of an address's query. */
public final class QueryFields {
  private QueryFields() {}

  public static Map<String, List<String>> of(String query) {
    Map<String, List<String>> fields = new LinkedHashMap<>();
    for (String pair : query.split("&")) {
      int equals = pair.indexOf('=');
      if (equals > 0) {
        fields
            .computeIfAbsent(decoded(pair.substring(0, equals)), any -> new ArrayList<>())
            .add(decoded(pair.substring(equals + 1)));
      }
    }
    return fields;
  }

  private static String decoded(String text) {
    try {
      return URLDecoder.decode(text, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException malformed) {
      return text;
    }
  }
}
