package kerfwright.schedule.search;

import java.util.SplittableRandom;

/**
 * A good plan at once: load starts are varied, each choice is run forward by {@link DayRun}, and
 * the best is kept. The number of runs is fixed by the size of the day, so that the same seed gives
 * the same plan.
 */
final class FirstPlan {
  private static final int MOST_RUNS = 600;
  private static final int RUNS_TIMES_DEMAND = 200_000;

  private final DayView view;
  private Timetable best;

  private FirstPlan(DayView view) {
    this.view = view;
    best = DayRun.run(view, new int[view.slots()]);
  }

  static Timetable of(DayView view, int seed) {
    return of(view, seed, Math.min(MOST_RUNS, RUNS_TIMES_DEMAND / (1 + view.day.demand())));
  }

  /** The best of so many variations. */
  static Timetable of(DayView view, int seed, int runs) {
    FirstPlan search = new FirstPlan(view);
    search.fullPressure();
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < runs && view.slots() > 0; i++) {
      search.vary(random);
    }
    if (runs > 0) {
      search.dropLoads();
    }
    return search.best;
  }

  /** Every steriliser runs without a break, from each possible offset. */
  private void fullPressure() {
    int step = (view.day.loadMin() + view.day.loadGridMin() - 1) / view.day.loadGridMin();
    for (int offset = 0; offset < step; offset++) {
      for (int stagger = 0; stagger < step; stagger++) {
        int[] starts = new int[view.slots()];
        for (int s = 0; s < view.day.sterilisers(); s++) {
          for (int q = (offset + s * stagger) % step; q < starts.length; q += step) {
            add(starts, q);
          }
        }
        attempt(starts);
      }
    }
  }

  private void dropLoads() {
    for (int q = 0; q < view.slots(); q++) {
      if (best.loads[q] > 0) {
        int[] fewer = best.loads.clone();
        fewer[q]--;
        attempt(fewer);
      }
    }
  }

  /** Adds, drops or moves a load. */
  private void vary(SplittableRandom random) {
    int[] starts = best.loads.clone();
    int from = random.nextInt(starts.length);
    int kind = random.nextInt(3);
    if (kind != 0 && starts[from] > 0) {
      starts[from]--;
      from = Math.max(0, Math.min(starts.length - 1, from + random.nextInt(-3, 4)));
    }
    if (kind != 1) {
      add(starts, from);
    }
    attempt(starts);
  }

  private void add(int[] starts, int q) {
    starts[q]++;
    if (!view.fits(starts)) {
      starts[q]--;
    }
  }

  private void attempt(int[] starts) {
    Timetable t = DayRun.run(view, starts);
    if (t.betterThan(best, view)) {
      best = t;
    }
  }
}
