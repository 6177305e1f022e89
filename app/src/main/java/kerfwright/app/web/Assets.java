package kerfwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The few files pages load: a closed list, all from the class path. */
final class Assets {
  private record Asset(String resource, String type) {}

  private static final String OWN = "/kerfwright/app/web/";
  private static final Map<String, Asset> KNOWN =
      Map.of(
          "page.css", new Asset(OWN + "page.css", "text/css; charset=utf-8"),
          "today.css", new Asset(OWN + "today.css", "text/css; charset=utf-8"),
          "page.js", new Asset(OWN + "page.js", "text/javascript; charset=utf-8"),
          "icon.svg", new Asset(OWN + "icon.svg", "image/svg+xml"),
          "htmx.js",
              new Asset(
                  "/META-INF/resources/webjars/htmx.org/2.0.10/dist/htmx.min.js",
                  "text/javascript; charset=utf-8"));

  private final Map<String, byte[]> loaded = new ConcurrentHashMap<>();

  void serve(Context call) {
    String name = call.pathParam("name");
    Asset asset = KNOWN.get(name);
    if (asset == null) {
      throw new NotFoundResponse();
    }
    call.header("Cache-Control", "private, max-age=300");
    call.contentType(asset.type()).result(loaded.computeIfAbsent(name, any -> load(asset)));
  }

  private static byte[] load(Asset asset) {
    try (InputStream in = Assets.class.getResourceAsStream(asset.resource())) {
      if (in == null) {
        throw new IllegalStateException("Not on the class path: " + asset.resource());
      }
      return in.readAllBytes();
    } catch (IOException unreadable) {
      throw new IllegalStateException(asset.resource(), unreadable);
    }
  }
}
