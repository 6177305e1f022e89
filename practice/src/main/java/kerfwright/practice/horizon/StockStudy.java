package kerfwright.practice.horizon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.Shortage;
import kerfwright.schedule.Stock;
import kerfwright.schedule.search.DayPlanner;

/**
 * How many of each type a usual week needs. Days are drawn once from the practice's own, with a
 * seed; every stock is tried on the same weeks, each day planned by the quick planner. The curve
 * begins with one instrument of each type and adds, one at a time, the one most often short for its
 * price, if that ends a shortage.
 *
 * <p>Lateness of an appointment is drawn evenly from 0 to {@link #LATEST_MIN} in steps of 5 min and
 * pushes those after it in the same chair (project setting); uses so far are drawn evenly over the
 * life. Left out: correlation between days, and stock that is dirty in the morning. The quick
 * planner gives valid plans, not proven ones, so the true need may be a little smaller.
 */
public final class StockStudy {
  static final int LATEST_MIN = 15;
  private static final int STEP_MIN = 5;
  private static final int DAYS_PER_WEEK = 5;
  private static final int MOST_PIECES = 40;
  private static final int MOST_STEPS = 150;

  /** The day, and by type the uses dealt to its instruments, the same for any stock. */
  private record Drawn(Day day, Map<String, List<Integer>> uses) {
    Map<String, Integer> shortagesWith(Map<String, Integer> pieces) {
      List<Stock> stock = new ArrayList<>();
      for (Stock s : day.stock()) {
        int n = Math.min(MOST_PIECES, pieces.getOrDefault(s.type(), 0));
        List<Integer> dealt = uses.getOrDefault(s.type(), List.of());
        stock.add(new Stock(s.type(), s.life(), dealt.subList(0, n)));
      }
      Map<String, Integer> missing = new HashMap<>();
      for (Shortage one : DayPlanner.quickShortages(day.withStock(stock))) {
        missing.merge(one.type(), 1, Integer::sum);
      }
      return missing;
    }
  }

  private final List<Drawn> days = new ArrayList<>();
  private final Map<String, Integer> present = new TreeMap<>();
  private final ToDoubleFunction<String> price;
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
    for (Day day : keptDays) {
      day.appointments().forEach(a -> a.needs().forEach(type -> present.put(type, 0)));
    }
    for (Day day : keptDays) {
      for (Stock s : day.stock()) {
        present.computeIfPresent(s.type(), (type, n) -> Math.max(n, s.uses().size()));
      }
    }
    SplittableRandom random = new SplittableRandom(seed);
    for (int d = 0; d < weeks * DAYS_PER_WEEK; d++) {
      days.add(drawn(keptDays.get(random.nextInt(kept)), random));
    }
  }

  private static Drawn drawn(Day day, SplittableRandom random) {
    Map<String, List<Integer>> uses = new TreeMap<>();
    for (Stock s : day.stock()) {
      uses.put(s.type(), random.ints(MOST_PIECES, 0, s.life()).boxed().toList());
    }
    return new Drawn(day.withFacts(FixedFacts.NONE).withAppointments(late(day, random)), uses);
  }

  private static List<Appointment> late(Day day, SplittableRandom random) {
    Map<String, Integer> free = new HashMap<>();
    List<Appointment> all = new ArrayList<>();
    for (Appointment a : day.inOrder()) {
      int late = STEP_MIN * random.nextInt(LATEST_MIN / STEP_MIN + 1);
      String chair = a.chair() == null ? "\n" + a.id() : a.chair();
      int start = Math.max(a.startMin(), free.getOrDefault(chair, 0));
      int end = Math.min(day.lengthMin(), start + a.lengthMin() + late);
      // one pushed past closing is not treated today
      if (end > start) {
        free.put(chair, end);
        all.add(a.movedTo(start, end));
      }
    }
    return all;
  }

  /**
   * The curve.
   *
   * @param found told of each point
   * @param stopped asked between points; the curve ends early then
   */
  public StockCurve curve(Consumer<StockPoint> found, BooleanSupplier stopped) {
    Map<String, Integer> one = new TreeMap<>(present);
    one.replaceAll((type, any) -> 1);
    List<StockPoint> points = new ArrayList<>();
    Optional<Tried> next = Optional.of(new Tried(one, ""));
    while (next.isPresent()) {
      Tried tried = next.get();
      points.add(tried.point());
      found.accept(tried.point());
      next =
          points.size() > MOST_STEPS || stopped.getAsBoolean() ? Optional.empty() : tried.better();
    }
    return new StockCurve(points, new Tried(present, "").point(), weeks, DAYS_PER_WEEK, kept, seed);
  }

  /** A stock on all days. */
  private final class Tried {
    private final Map<String, Integer> pieces;
    private final String added;
    private final List<Map<String, Integer>> shortages;
    private final Map<String, Integer> byType = new TreeMap<>();

    Tried(Map<String, Integer> pieces, String added) {
      this.pieces = pieces;
      this.added = added;
      shortages = days.stream().map(day -> day.shortagesWith(pieces)).toList();
      shortages.forEach(day -> day.forEach((type, n) -> byType.merge(type, n, Integer::sum)));
    }

    private int total() {
      return byType.values().stream().mapToInt(n -> n).sum();
    }

    /** With one more of the type most often short for its price that ends a shortage. */
    Optional<Tried> better() {
      return byType.keySet().stream()
          .filter(type -> pieces.getOrDefault(type, 0) < MOST_PIECES)
          .sorted(
              Comparator.comparingDouble(
                  type ->
                      -byType.getOrDefault(type, 0) / Math.max(1e-6, price.applyAsDouble(type))))
          .map(
              type -> {
                Map<String, Integer> more = new TreeMap<>(pieces);
                more.merge(type, 1, Integer::sum);
                return new Tried(more, type);
              })
          .filter(more -> more.total() < total())
          .findFirst();
    }

    StockPoint point() {
      double cost =
          pieces.entrySet().stream()
              .mapToDouble(one -> one.getValue() * price.applyAsDouble(one.getKey()))
              .sum();
      long quiet =
          Stream.iterate(0, day -> day + DAYS_PER_WEEK)
              .limit(weeks)
              .filter(
                  day ->
                      shortages.subList(day, day + DAYS_PER_WEEK).stream().allMatch(Map::isEmpty))
              .count();
      return new StockPoint(pieces, added, cost, (double) total() / weeks, (double) quiet / weeks);
    }
  }
}
