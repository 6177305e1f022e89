package kerfwright.app.signin;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/** Where to go on afterwards: a place of this server, never another one. */
final class To {
  private To() {}

  static String sent(Context call) {
    String form = call.formParam("to");
    return sound(form == null ? call.queryParam("to") : form);
  }

  static String sound(@Nullable String path) {
    return path != null && path.matches("/(?![/\\\\])[\\x21-\\x7e]*") ? path : "/";
  }

  static String encoded(String path) {
    return URLEncoder.encode(path, StandardCharsets.UTF_8);
  }
}
