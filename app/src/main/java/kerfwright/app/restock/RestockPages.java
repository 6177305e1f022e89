package kerfwright.app.restock;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.Map;
import kerfwright.app.print.Paper;
import kerfwright.app.security.Role;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.practice.restock.RestockOptions;
import kerfwright.practice.restock.RestockReport;
import org.jspecify.annotations.Nullable;

/** What to buy, why, and what cutting costs. */
public final class RestockPages {
  private final RestockDesk desk;
  private final Templates templates;

  public RestockPages(RestockDesk desk, Templates templates) {
    this.desk = desk;
    this.templates = templates;
  }

  public void routes(JavalinConfig config) {
    config.routes.get("/restock", this::show, Role.LOCAL);
    config.routes.get("/restock.csv", this::csv, Role.LOCAL);
    config.routes.get("/restock.pdf", this::pdf, Role.LOCAL);
  }

  private static RestockOptions options(Context call) {
    RestockOptions usual = RestockOptions.USUAL;
    return new RestockOptions(
        weeks(call.queryParam("ahead"), usual.aheadWeeks()),
        weeks(call.queryParam("history"), usual.historyWeeks()));
  }

  private static int weeks(@Nullable String text, int usual) {
    return text != null && text.strip().matches("\\d{1,3}")
        ? Math.max(1, Math.min(RestockOptions.MOST_WEEKS, Integer.parseInt(text.strip())))
        : usual;
  }

  private void show(Context call) {
    RestockReport report = desk.report(options(call));
    templates.html(call, "restock/restock.jte", Map.of("report", report));
  }

  private void csv(Context call) {
    Say say = templates.say(call);
    call.header("Content-Disposition", "attachment; filename=\"order-" + desk.today() + ".csv\"");
    call.contentType("text/csv; charset=utf-8")
        .result(OrderCsv.of(say, desk.report(options(call))));
  }

  private void pdf(Context call) {
    String document =
        Templates.render(
            templates.say(call),
            "restock/order.jte",
            Map.of("report", desk.report(options(call)), "today", desk.today()));
    call.header("Content-Disposition", "inline; filename=\"order-" + desk.today() + ".pdf\"");
    call.contentType("application/pdf").result(Paper.pdf(document));
  }
}
