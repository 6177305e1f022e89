package kerfwright.app.day;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import kerfwright.app.json.JsonText;
import kerfwright.practice.horizon.StockCurve;
import kerfwright.practice.horizon.StockPoint;

/** The stock a usual week needs, as text and as {@code week/1}. */
final class WeekOutput {
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

  static String text(StockCurve curve) {
    StringBuilder out = new StringBuilder();
    out.append(curve.weeks()).append(" weeks of ").append(curve.daysPerWeek());
    out.append(" days drawn from ").append(curve.keptDays()).append(" (seed ");
    out.append(curve.seed()).append("); quick valid plans, not proven\n");
    out.append(figure("Now", curve.now()));
    StockPoint enough =
        curve.enough(TROUBLED_WEEKS).orElse(curve.points().get(curve.points().size() - 1));
    out.append(figure("Enough for 9 weeks in 10", enough));
    Map<String, Integer> add = curve.toAdd(enough);
    new TreeMap<>(enough.pieces())
        .forEach(
            (type, n) -> {
              out.append("  ").append(type).append("  ").append(n);
              Integer more = add.get(type);
              out.append(more == null ? "" : ", " + more + " more than there are").append('\n');
            });
    out.append("Pieces in all, shortages a week, weeks without one:\n");
    for (StockPoint p : curve.points()) {
      int all = p.pieces().values().stream().mapToInt(n -> n).sum();
      out.append(
          String.format(
              Locale.ROOT,
              "  %3d  %6.2f  %3.0f %%%s%n",
              all,
              p.shortagesPerWeek(),
              100 * p.quietWeeks(),
              p.added().isEmpty() ? "" : "  + " + p.added()));
    }
    return out.toString();
  }

  private static String figure(String what, StockPoint p) {
    return String.format(
        Locale.ROOT,
        "%s: %.2f shortages a week, %.0f %% of weeks without one%n",
        what,
        p.shortagesPerWeek(),
        100 * p.quietWeeks());
  }
}
