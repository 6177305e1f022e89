package kerfwright.practice.day;

import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Simulated annealing over the starts of loads, each choice run forward by {@link DayRun}. Its
 * length is counted in runs, not in time, so that a seed repeats.
 *
 * <p>Left out: which instrument serves whom is always decided by the forward run, so the best plan
 * may lie outside; the solver takes it from there. Metropolis rule with geometric cooling, common
 * practice.
 */
final class Annealing {
  private static final double HOT = 1.0;
  private static final double COLD = 0.08;

  /** A superfluous load counts a little even while shortages are the goal. */
  private static final double LOAD_ASIDE = 0.03;

  private final DayView view;
  private final SplittableRandom random;
  private final Consumer<Timetable> found;
  private final BooleanSupplier stopped;

  Annealing(DayView view, int seed, Consumer<Timetable> found, BooleanSupplier stopped) {
    this.view = view;
    random = new SplittableRandom(seed);
    this.found = found;
    this.stopped = stopped;
  }

  /** Seeks fewer shortages. */
  void fewerShortages(Timetable from, int runs) {
    anneal(from, runs, t -> t.shortages() + LOAD_ASIDE * t.newLoads());
  }

  /** Seeks fewer loads at no more shortages. */
  void fewerLoads(Timetable from, int runs) {
    int shortages = from.shortages();
    anneal(from, runs, t -> 2.0 * Math.max(0, t.shortages() - shortages) + t.newLoads());
  }

  private interface Cost {
    double of(Timetable t);
  }

  private void anneal(Timetable from, int runs, Cost cost) {
    if (view.slots() == 0) {
      return;
    }
    int[] starts = from.loads.clone();
    Timetable best = from;
    double now = cost.of(DayRun.run(view, starts));
    double cooling = Math.pow(COLD / HOT, 1.0 / Math.max(1, runs));
    double heat = HOT;
    for (int i = 0; i < runs && !stopped.getAsBoolean(); i++) {
      heat *= cooling;
      int[] other = neighbour(starts);
      Timetable t = DayRun.run(view, other);
      double c = cost.of(t);
      if (c <= now || random.nextDouble() < Math.exp((now - c) / heat)) {
        starts = other;
        now = c;
      }
      if (t.betterThan(best, view)) {
        best = t;
        found.accept(t);
      }
    }
  }

  /** Moves, adds or drops a load, or moves all loads from one on. */
  private int[] neighbour(int[] starts) {
    for (int tries = 0; tries < 20; tries++) {
      int[] other = starts.clone();
      int q = random.nextInt(other.length);
      switch (random.nextInt(4)) {
        case 0 -> other[q]++;
        case 1 -> move(other, q, random.nextInt(-3, 4));
        case 2 -> other[q] = Math.max(0, other[q] - 1);
        default -> moveAllFrom(other, q, random.nextBoolean() ? 1 : -1);
      }
      if (view.fits(other)) {
        return other;
      }
    }
    return starts.clone();
  }

  private static void move(int[] starts, int q, int by) {
    int to = q + by;
    if (starts[q] > 0 && to >= 0 && to < starts.length) {
      starts[q]--;
      starts[to]++;
    }
  }

  private static void moveAllFrom(int[] starts, int from, int by) {
    int[] before = starts.clone();
    for (int q = from; q < starts.length; q++) {
      starts[q] = 0;
    }
    for (int q = from; q < starts.length; q++) {
      int to = q + by;
      if (to >= 0 && to < starts.length) {
        starts[to] += before[q];
      }
    }
  }
}
