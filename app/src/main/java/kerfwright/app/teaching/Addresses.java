package kerfwright.app.teaching;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Addresses carried within others. */
public final class Addresses {
  private Addresses() {}

  public static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
