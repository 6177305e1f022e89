package kerfwright.app.daypage;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.math.BigDecimal;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerfwright.app.day.WeekOutput;
import kerfwright.app.drawing.chart.Chart;
import kerfwright.app.feature.Feature;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.practice.daylist.TypeName;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.horizon.StockCurve;
import kerfwright.practice.horizon.StockPoint;
import kerfwright.practice.record.CutRecord;
import org.jspecify.annotations.Nullable;

/** How many of each type the usual week needs: the curve of shortages against cost. */
public final class WeekPages implements Feature {
  private final DayService service;
  private final CutRecord record;
  private final Clock clock;
  private final TypeWords types;
  private final Templates templates;
  private volatile @Nullable WeekJob job;

  WeekPages(
      DayService service, CutRecord record, TypeWords types, Templates templates, Clock clock) {
    this.service = service;
    this.record = record;
    this.clock = clock;
    this.types = types;
    this.templates = templates;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/day/week", this::page, Access.CASES);
    config.routes.get("/day/week/board", this::board, Access.CASES);
    config.routes.post("/day/week", this::study, Access.WORK);
    config.routes.post("/day/week/stop", this::stop, Access.WORK);
  }

  @Override
  public List<String> pages() {
    return List.of("/day/week");
  }

  private WeekDays days() {
    return WeekDays.of(service, record, clock);
  }

  /** What one instrument of a type costs, on average of those with a price. */
  private Map<String, Double> prices() {
    return Stream.of(InstrumentState.values())
        .flatMap(state -> service.drawer().in(state).stream())
        .filter(item -> item.isRotary() && price(item) > 0)
        .collect(
            Collectors.groupingBy(
                item -> TypeName.of(item.properties()),
                Collectors.averagingDouble(WeekPages::price)));
  }

  private static double price(StockItem item) {
    BigDecimal price = item.price();
    return price == null ? 0 : price.doubleValue();
  }

  private void study(Context call) {
    WeekDays days = days();
    if (!days.days().isEmpty()) {
      WeekJob before = job;
      if (before != null) {
        before.stop();
      }
      WeekJob next = new WeekJob(days, prices());
      job = next;
      Thread study = new Thread(next, "usual-week");
      study.setDaemon(true);
      study.start();
    }
    call.redirect("/day/week", HttpStatus.SEE_OTHER);
  }

  private void stop(Context call) {
    WeekJob running = job;
    if (running != null) {
      running.stop();
    }
    call.redirect("/day/week", HttpStatus.SEE_OTHER);
  }

  /** One type: what there is and what is needed. */
  public record TypeLine(String type, int now, int needed, int add) {}

  private void page(Context call) {
    Map<String, Object> values = board(templates.say(call));
    values.put("from", days());
    templates.html(call, "day/week.jte", values);
  }

  private void board(Context call) {
    templates.html(call, "day/week-board.jte", board(templates.say(call)));
  }

  private Map<String, Object> board(Say say) {
    WeekJob known = job;
    StockCurve curve = known == null ? null : known.curve();
    boolean failed = known != null && known.failed();
    Map<String, Object> values = new HashMap<>();
    values.put("running", known != null && curve == null && !failed);
    values.put("failed", failed);
    values.put("points", known == null ? 0 : known.points());
    List<TypeLine> lines = new ArrayList<>();
    Chart chart = null;
    String result = "";
    if (known != null && curve != null) {
      StockPoint enough = WeekOutput.enough(curve);
      new TreeMap<>(enough.pieces())
          .forEach(
              (type, n) -> {
                int now = curve.now().pieces().getOrDefault(type, 0);
                lines.add(new TypeLine(types.brief(say, type), now, n, Math.max(0, n - now)));
              });
      chart = curve.points().size() < 2 ? null : chart(say, curve, enough);
      result =
          say.at(
              known.days().fromRecord() ? "day.week-result-record" : "day.week-result",
              figure(say, curve.now().shortagesPerWeek()),
              figure(say, enough.shortagesPerWeek()),
              Math.round(100 * (1 - enough.quietWeeks())),
              curve.weeks(),
              curve.keptDays());
    }
    values.put("lines", lines);
    values.put("chart", chart);
    values.put("result", result);
    return values;
  }

  /** Shortages a week against the cost of the stock. */
  private static Chart chart(Say say, StockCurve curve, StockPoint enough) {
    List<StockPoint> points = curve.points();
    String shortages = say.at("day.week-shortages");
    return Chart.of(
        say.at("day.week-curve"),
        say.at(
            "day.week-about",
            figure(say, curve.now().cost()),
            figure(say, curve.now().shortagesPerWeek()),
            figure(say, enough.cost()),
            figure(say, enough.shortagesPerWeek())),
        say.at("day.week-cost"),
        shortages,
        List.of(
            new Chart.Line(
                shortages,
                points.stream().map(StockPoint::cost).toList(),
                points.stream().map(StockPoint::shortagesPerWeek).toList())),
        List.of(
            spot(say.at("day.week-enough"), enough), spot(say.at("day.week-now"), curve.now())));
  }

  private static Chart.Spot spot(String name, StockPoint point) {
    return new Chart.Spot(name, point.cost(), point.shortagesPerWeek());
  }

  private static String figure(Say say, double value) {
    return say.figures(String.format(java.util.Locale.ROOT, "%.1f", value));
  }
}
