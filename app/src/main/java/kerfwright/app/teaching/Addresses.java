package kerfwright.app.teaching;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Addresses carried within others. */
public final class Addresses {
  private Addresses() {}

  public static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  /** What stands after the question mark; empty where there is none. */
  static String query(String address) {
    int mark = address.indexOf('?');
    return mark < 0 ? "" : address.substring(mark + 1);
  }

  static String path(String address) {
    int mark = address.indexOf('?');
    return mark < 0 ? address : address.substring(0, mark);
  }
}
