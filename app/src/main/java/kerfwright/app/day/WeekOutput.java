package kerfwright.app.day;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import kerfwright.app.json.JsonText;
import kerfwright.app.words.Say;
import kerfwright.practice.horizon.StockCurve;
import kerfwright.practice.horizon.StockPoint;

/** The stock a usual week needs, as text and as {@code week/1}. */
public final class WeekOutput {
  private static final double TROUBLED_WEEKS = 0.1;

  private WeekOutput() {}

  static String json(StockCurve curve) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("contract", "week/1").put("weeks", curve.weeks());
    json.put("daysPerWeek", curve.daysPerWeek()).put("keptDays", curve.keptDays());
    json.put("seed", curve.seed());
    put(json.putObject("now"), curve.now());
    ArrayNode points = json.putArray("curve");
    curve.points().forEach(p -> put(points.addObject(), p));
    curve.enough(TROUBLED_WEEKS).ifPresent(p -> put(json.putObject("enough"), p));
    return JsonText.of(json);
  }

  private static void put(ObjectNode node, StockPoint p) {
    ObjectNode pieces = node.putObject("pieces");
    new TreeMap<>(p.pieces()).forEach(pieces::put);
    node.put("added", p.added());
    node.set("cost", JsonText.number(p.cost()));
    node.set("shortagesPerWeek", JsonText.number(p.shortagesPerWeek()));
    node.set("quietWeeks", JsonText.number(p.quietWeeks()));
  }

  /** The cheapest stock that sees no shortage in nine weeks of ten, or the largest looked at. */
  public static StockPoint enough(StockCurve curve) {
    return curve.enough(TROUBLED_WEEKS).orElse(curve.points().get(curve.points().size() - 1));
  }

  static String text(Say say, StockCurve curve) {
    StringBuilder out = new StringBuilder();
    line(
        out,
        say.at(
            "day.week-text",
            curve.weeks(),
            curve.daysPerWeek(),
            curve.keptDays(),
            Long.toString(curve.seed())));
    line(out, figure(say, "day.week-text-now", curve.now()));
    StockPoint enough = enough(curve);
    line(out, figure(say, "day.week-text-enough", enough));
    Map<String, Integer> add = curve.toAdd(enough);
    new TreeMap<>(enough.pieces())
        .forEach(
            (type, n) -> {
              Integer more = add.get(type);
              String told = more == null ? "" : ", " + say.at("day.week-text-more", more);
              line(out, "  " + type + "  " + n + told);
            });
    line(out, say.at("day.week-text-curve"));
    for (StockPoint p : curve.points()) {
      int all = p.pieces().values().stream().mapToInt(n -> n).sum();
      String row =
          String.format(
              Locale.ROOT,
              "  %3d  %6.2f  %3.0f %%",
              all,
              p.shortagesPerWeek(),
              100 * p.quietWeeks());
      line(out, say.figures(row) + (p.added().isEmpty() ? "" : "  + " + p.added()));
    }
    return out.toString();
  }

  private static void line(StringBuilder out, String text) {
    out.append(text).append('\n');
  }

  private static String figure(Say say, String key, StockPoint p) {
    return say.at(
        key,
        say.figures(String.format(Locale.ROOT, "%.2f", p.shortagesPerWeek())),
        Math.round(100 * p.quietWeeks()));
  }
}
