package kerfwright.app.web;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import kerfwright.app.drawing.ArchSheet;
import kerfwright.app.feature.Feature;
import kerfwright.app.security.Access;

/** The few files pages load: a closed list, all from the class path. */
final class Assets implements Feature {
  private record Asset(String resource, String type) {}

  private static final String SCRIPT = "text/javascript; charset=utf-8";
  private static final String STYLE = "text/css; charset=utf-8";
  private static final String OWN = "/kerfwright/app/web/";
  private static final Map<String, Asset> KNOWN =
      Map.ofEntries(
          style("page.css"),
          style("day.css"),
          style("today.css"),
          style("label.css"),
          style("reprocessing.css"),
          style("records.css"),
          style("pace.css"),
          style("chairside.css"),
          style("learner.css"),
          script("page.js"),
          script("day.js"),
          script("scan.js"),
          style("case.css"),
          style("plan.css"),
          style("teach.css"),
          script("teach.js"),
          script("case.js"),
          script("plan.js"),
          style("chart.css"),
          script("chart.js"),
          script("chairside.js"),
          script("chair-store.js"),
          script("chair-keys.js"),
          script("chair-pace.js"),
          script("chair-show.js"),
          script("chair-differs.js"),
          script("chair-handpiece.js"),
          script("chair-swap.js"),
          script("chair-worker.js"),
          script("switch.js"),
          script("sign-out.js"),
          Map.entry("icon.svg", new Asset(OWN + "icon.svg", "image/svg+xml")),
          library("htmx.js", "htmx.org/2.0.10/dist/htmx.min.js", SCRIPT),
          library("uplot.js", "uplot/1.6.30/dist/uPlot.iife.min.js", SCRIPT),
          library("uplot.css", "uplot/1.6.30/dist/uPlot.min.css", STYLE));

  private final Map<String, byte[]> loaded = new ConcurrentHashMap<>();

  private static Map.Entry<String, Asset> script(String name) {
    return Map.entry(name, new Asset(OWN + name, SCRIPT));
  }

  private static Map.Entry<String, Asset> style(String name) {
    return Map.entry(name, new Asset(OWN + name, STYLE));
  }

  private static Map.Entry<String, Asset> library(String name, String file, String type) {
    return Map.entry(name, new Asset("/META-INF/resources/webjars/" + file, type));
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/chairside/worker.js", call -> serve(call, "chair-worker.js"), Access.OPEN);
    config.routes.get("/static/arch.css", Assets::arch, Access.OPEN);
    config.routes.get("/static/{name}", this::serve, Access.OPEN);
  }

  void serve(Context call) {
    serve(call, call.pathParam("name"));
  }

  /** A file under another address: a worker serves what stands below its own. */
  void serve(Context call, String name) {
    Asset asset = KNOWN.get(name);
    if (asset == null) {
      throw new NotFoundResponse();
    }
    call.header("Cache-Control", "private, max-age=300");
    call.contentType(asset.type()).result(loaded.computeIfAbsent(name, any -> load(asset)));
  }

  /** The teeth of the form, laid out as arches. */
  private static void arch(Context call) {
    call.header("Cache-Control", "private, max-age=300");
    call.contentType("text/css; charset=utf-8").result(ArchSheet.css());
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
