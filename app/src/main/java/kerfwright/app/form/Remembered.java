package kerfwright.app.form;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;

/** What this device offers again next time. A convenience: it fails nothing that is written. */
public final class Remembered {
  private Remembered() {}

  /** Any text; a cookie holds ASCII alone (RFC 6265), so it is percent-encoded as UTF-8. */
  public static void keep(Context call, String name, String value, Duration howLong) {
    String encoded = URLEncoder.encode(value, StandardCharsets.UTF_8).replace("+", "%20");
    Cookie cookie = new Cookie(name, encoded, "/", (int) howLong.toSeconds());
    cookie.setHttpOnly(true);
    cookie.setSecure(call.scheme().equals("https"));
    cookie.setSameSite(SameSite.STRICT);
    call.cookie(cookie);
  }

  /** Empty where nothing is remembered, or what is remembered is no text. */
  public static String of(Context call, String name) {
    String value = call.cookie(name);
    try {
      return value == null ? "" : URLDecoder.decode(value, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException notEncoded) {
      return "";
    }
  }
}
