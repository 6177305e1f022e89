package kerfwright.practice.horizon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import kerfwright.schedule.Day;
import kerfwright.schedule.Shortage;
import kerfwright.schedule.search.DayPlanner;

/**
 * How many of each type a usual week needs. Weeks are drawn once; every stock is tried on the same
 * weeks, each day planned by the quick planner. The curve begins with one instrument of each type
 * and adds, one at a time, the one that ends most shortages for its price.
 *
 * <p>The quick planner gives valid plans, not proven ones, so the true need may be a little
 * smaller. An instrument once found of little use is tried again only when it comes first again
 * (lazy greedy, right where gains shrink as the stock grows).
 */
public final class StockStudy {
  private static final int DAYS_PER_WEEK = 5;
  private static final int MOST_PIECES = 40;
  private static final int MOST_STEPS = 150;
  private static final int QUICK_RUNS = 40;

  private final List<UsualDays.Drawn> days = new ArrayList<>();
  private final Map<String, Integer> present;
  private final ToDoubleFunction<String> price;
  private final List<String> types;
  private final int weeks;
  private final int kept;
  private final long seed;

  /**
   * Draws the weeks.
   *
   * @param keptDays the practice's own days, at least one; their stock is the present one
   * @param price price of one instrument of a type
   */
  public StockStudy(List<Day> keptDays, ToDoubleFunction<String> price, int weeks, long seed) {
    if (keptDays.isEmpty() || weeks < 1) {
      throw new IllegalArgumentException(
          "needs at least one day and one week, got " + keptDays.size() + " and " + weeks);
    }
    this.price = price;
    this.weeks = weeks;
    this.kept = keptDays.size();
    this.seed = seed;
    UsualDays usual = new UsualDays(keptDays, seed);
    types = List.copyOf(usual.types());
    present = new TreeMap<>();
    for (Day day : keptDays) {
      day.stock().forEach(s -> present.merge(s.type(), s.uses().size(), Math::max));
    }
    present.keySet().retainAll(types);
    for (int d = 0; d < weeks * DAYS_PER_WEEK; d++) {
      days.add(usual.next(MOST_PIECES));
    }
  }

  /** Types in question. */
  public List<String> types() {
    return types;
  }

  /**
   * The curve.
   *
   * @param found told of each point
   * @param stopped asked between points; the curve ends early then
   */
  public StockCurve curve(Consumer<StockPoint> found, BooleanSupplier stopped) {
    StockPoint now = point(new Tried(present), "");
    Map<String, Integer> pieces = new TreeMap<>();
    types.forEach(type -> pieces.put(type, 1));
    Tried tried = new Tried(pieces);
    List<StockPoint> points = new ArrayList<>();
    points.add(point(tried, ""));
    found.accept(points.get(0));
    PriorityQueue<Gain> queue =
        new PriorityQueue<>(
            Comparator.comparingDouble((Gain g) -> -g.perPrice()).thenComparing(Gain::type));
    types.forEach(type -> queue.add(new Gain(type, Double.MAX_VALUE, -1, null)));
    for (int step = 0; step < MOST_STEPS && tried.total > 0 && !stopped.getAsBoolean(); ) {
      Gain first = queue.poll();
      if (first == null || first.perPrice() <= 0) {
        break;
      }
      if (first.step() == step && first.then() != null) {
        tried = first.then();
        step++;
        points.add(point(tried, first.type()));
        found.accept(points.get(points.size() - 1));
        queue.add(new Gain(first.type(), first.perPrice(), -1, null));
      } else {
        queue.add(gain(tried, first.type(), step));
      }
    }
    return new StockCurve(points, now, weeks, DAYS_PER_WEEK, kept, seed);
  }

  private record Gain(
      String type, double perPrice, int step, @org.jspecify.annotations.Nullable Tried then) {}

  private Gain gain(Tried tried, String type, int step) {
    if (tried.pieces.getOrDefault(type, 0) >= MOST_PIECES) {
      return new Gain(type, 0, step, null);
    }
    Tried then = tried.withOneMore(type);
    return new Gain(
        type, (tried.total - then.total) / Math.max(1e-6, price.applyAsDouble(type)), step, then);
  }

  private StockPoint point(Tried tried, String added) {
    double cost = 0;
    for (Map.Entry<String, Integer> one : tried.pieces.entrySet()) {
      cost += one.getValue() * price.applyAsDouble(one.getKey());
    }
    int quiet = 0;
    for (int w = 0; w < weeks; w++) {
      int week = 0;
      for (int d = 0; d < DAYS_PER_WEEK; d++) {
        week += tried.shortages.get(w * DAYS_PER_WEEK + d).values().stream().mapToInt(n -> n).sum();
      }
      quiet += week == 0 ? 1 : 0;
    }
    return new StockPoint(
        tried.pieces, added, cost, (double) tried.total / weeks, (double) quiet / weeks);
  }

  /** A stock on all days. */
  private final class Tried {
    private final Map<String, Integer> pieces;
    private final List<Map<String, Integer>> shortages = new ArrayList<>();
    private int total;

    Tried(Map<String, Integer> pieces) {
      this.pieces = Map.copyOf(pieces);
      days.forEach(day -> add(planned(day)));
    }

    private Tried(Tried before, Map<String, Integer> pieces, String type) {
      this.pieces = Map.copyOf(pieces);
      for (int d = 0; d < days.size(); d++) {
        Map<String, Integer> was = before.shortages.get(d);
        add(was.containsKey(type) ? planned(days.get(d)) : was);
      }
    }

    private void add(Map<String, Integer> day) {
      shortages.add(day);
      total += day.values().stream().mapToInt(n -> n).sum();
    }

    private Map<String, Integer> planned(UsualDays.Drawn day) {
      Map<String, Integer> missing = new HashMap<>();
      for (Shortage s : DayPlanner.quickShortages(day.with(pieces), QUICK_RUNS)) {
        missing.merge(s.type(), 1, Integer::sum);
      }
      return missing;
    }

    Tried withOneMore(String type) {
      Map<String, Integer> more = new TreeMap<>(pieces);
      more.merge(type, 1, Integer::sum);
      return new Tried(this, more, type);
    }
  }
}
