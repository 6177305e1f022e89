package kerfwright.app.daypage;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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
  private static final double TROUBLED_WEEKS = 0.1;

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

  private Map<String, Double> prices() {
    Map<String, List<Double>> paid = new HashMap<>();
    for (InstrumentState state : InstrumentState.values()) {
      for (StockItem item : service.drawer().in(state)) {
        var price = item.price();
        if (item.isRotary() && price != null && price.signum() > 0) {
          paid.computeIfAbsent(TypeName.of(item.properties()), t -> new ArrayList<>())
              .add(price.doubleValue());
        }
      }
    }
    Map<String, Double> prices = new HashMap<>();
    paid.forEach(
        (type, all) -> prices.put(type, all.stream().mapToDouble(p -> p).average().orElse(1)));
    return prices;
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
    WeekJob.State state = known == null ? null : known.state();
    Map<String, Object> values = new HashMap<>();
    values.put("running", state != null && state.running());
    values.put("failed", state != null && state.failed());
    values.put("points", state == null ? 0 : state.points().size());
    StockCurve curve = state == null ? null : state.curve();
    List<TypeLine> lines = new ArrayList<>();
    Chart chart = null;
    String result = "";
    if (known != null && curve != null) {
      StockPoint enough =
          curve.enough(TROUBLED_WEEKS).orElse(curve.points().get(curve.points().size() - 1));
      new TreeMap<>(enough.pieces())
          .forEach(
              (type, n) -> {
                int now = curve.now().pieces().getOrDefault(type, 0);
                lines.add(new TypeLine(types.brief(say, type), now, n, Math.max(0, n - now)));
              });
      chart = curve.points().size() < 2 ? null : WeekCurve.of(say, curve, enough);
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

  static String figure(Say say, double value) {
    return say.figures(String.format(java.util.Locale.ROOT, "%.1f", value));
  }
}
