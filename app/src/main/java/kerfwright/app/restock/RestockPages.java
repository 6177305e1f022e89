package kerfwright.app.restock;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Day;
import kerfwright.app.form.Sent;
import kerfwright.app.print.Paper;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.practice.restock.PurchaseRequest;
import kerfwright.practice.restock.RestockOptions;
import kerfwright.practice.restock.RestockReport;
import org.jspecify.annotations.Nullable;

/** What to buy, why, and what cutting costs. */
public record RestockPages(RestockService service, Templates templates) implements Feature {
  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/restock", this::show, Access.CASES);
    config.routes.post("/restock/wish", this::keep, Access.WORK);
    config.routes.post("/restock/wish/drop", this::drop, Access.WORK);
    config.routes.get("/restock.csv", this::csv, Access.ORDER_API);
    config.routes.get("/restock.pdf", this::pdf, Access.CASES);
  }

  @Override
  public List<String> pages() {
    return List.of("/restock");
  }

  private static RestockOptions options(Context call) {
    RestockOptions usual = RestockOptions.USUAL;
    return new RestockOptions(
        weeks(call.queryParam("ahead"), usual.aheadWeeks()),
        weeks(call.queryParam("history"), usual.historyWeeks()));
  }

  private static int weeks(@Nullable String text, int usual) {
    return Sent.whole(text)
        .map(weeks -> Math.max(1, Math.min(RestockOptions.MOST_WEEKS, weeks)))
        .orElse(usual);
  }

  private void show(Context call) {
    RestockReport report = service.report(options(call));
    Map<String, Object> values = new HashMap<>();
    values.put("report", report);
    values.put("dropped", request(call::queryParam).orElse(null));
    templates.html(call, "restock/restock.jte", values);
  }

  /** A wish as sent; empty where it is none. */
  private static Optional<PurchaseRequest> request(Function<String, @Nullable String> sent) {
    String type = Objects.requireNonNullElse(sent.apply("type"), "");
    String pieces = Objects.requireNonNullElse(sent.apply("pieces"), "");
    String day = Objects.requireNonNullElse(sent.apply("day"), "");
    if (!type.matches("[a-z0-9-]{1,120}") || !pieces.matches("[1-9]\\d{0,2}")) {
      return Optional.empty();
    }
    return Day.of(day).map(on -> new PurchaseRequest(type, on, Integer.parseInt(pieces)));
  }

  private void keep(Context call) {
    request(call::formParam).ifPresent(service.requests()::keep);
    call.redirect("/restock", HttpStatus.SEE_OTHER);
  }

  /** Takes a wish off; the page offers to put it back. */
  private void drop(Context call) {
    Optional<PurchaseRequest> request = request(call::formParam);
    request.ifPresent(one -> service.requests().drop(one.type(), one.day()));
    String told =
        request
            .map(w -> "?type=" + w.type() + "&day=" + w.day() + "&pieces=" + w.pieces())
            .orElse("");
    call.redirect("/restock" + told, HttpStatus.SEE_OTHER);
  }

  private void csv(Context call) {
    Say say = templates.say(call);
    call.header(
        "Content-Disposition", "attachment; filename=\"order-" + service.today() + ".csv\"");
    call.contentType("text/csv; charset=utf-8")
        .result(OrderCsv.of(say, service.report(options(call))));
  }

  private void pdf(Context call) {
    String document =
        Templates.render(
            templates.say(call),
            "restock/order.jte",
            Map.of("report", service.report(options(call)), "today", service.today()));
    call.header("Content-Disposition", "inline; filename=\"order-" + service.today() + ".pdf\"");
    call.contentType("application/pdf").result(Paper.pdf(document));
  }
}
