package kerfwright.app.input;

import java.util.regex.Pattern;

/**
 * The one place where control characters are taken out of what is handed in: no field has a use for
 * them, YAML forbids them and PostgreSQL keeps no NUL. Tab and line ends stay.
 */
public final class PlainText {
  private static final Pattern CONTROLS =
      Pattern.compile("[\\p{Cntrl}\\x{80}-\\x{9F}&&[^\\t\\n\\r\\x{85}]]");
  private static final Pattern IN_FORMS =
      Pattern.compile("%(0[0-8bcef]|1[0-9a-f]|7f)", Pattern.CASE_INSENSITIVE);

  // an even number of backslashes before it: the one before u is not itself escaped
  private static final Pattern IN_JSON =
      Pattern.compile(
          "(?<!\\\\)((?:\\\\\\\\)*)\\\\u00(0[0-8bcef]|1[0-9a-f]|7f)", Pattern.CASE_INSENSITIVE);

  private PlainText() {}

  /** Text without its control characters. */
  public static String of(String text) {
    return CONTROLS.matcher(text).replaceAll("");
  }

  /** The same of a query or a form, still percent-encoded. */
  public static String ofForm(String encoded) {
    return IN_FORMS.matcher(encoded).replaceAll("");
  }

  /** The same of JSON text, written as they are or escaped. */
  public static String ofJson(String json) {
    return IN_JSON.matcher(of(json)).replaceAll("$1");
  }
}
