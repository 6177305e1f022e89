package kerfwright.practice.day;

import java.util.SplittableRandom;

/**
 * A good plan at once: load starts are varied, each choice is run forward by {@link DayRun}, and
 * the best is kept. The number of runs is fixed by the size of the day, so that the same seed gives
 * the same plan.
 */
final class FirstPlan {
  private final DayView view;
  private final SplittableRandom random;
  private int[] loads;
  private Timetable best;

  private FirstPlan(DayView view, int seed) {
    this.view = view;
    random = new SplittableRandom(seed);
    loads = new int[view.slots()];
    best = DayRun.run(view, loads);
  }

  static Timetable of(DayView view, int seed) {
    return of(view, seed, Math.min(600, 200_000 / (1 + view.problem.demand())));
  }

  /** The best of so many variations. */
  static Timetable of(DayView view, int seed, int runs) {
    FirstPlan search = new FirstPlan(view, seed);
    search.fullPressure();
    search.dropLoads();
    for (int i = 0; i < runs && view.slots() > 0; i++) {
      search.vary();
    }
    search.dropLoads();
    return search.best;
  }

  /** The best run in which sterilisers are never at rest. */
  static Timetable underPressure(DayView view) {
    FirstPlan search = new FirstPlan(view, 0);
    search.fullPressure();
    return search.best;
  }

  /** Every steriliser runs without a break, from each possible offset. */
  private void fullPressure() {
    int step =
        (view.problem.loadMin() + view.problem.loadGridMin() - 1) / view.problem.loadGridMin();
    for (int offset = 0; offset < step; offset++) {
      for (int stagger = 0; stagger < step; stagger++) {
        int[] starts = new int[view.slots()];
        for (int s = 0; s < view.problem.sterilisers(); s++) {
          for (int q = (offset + s * stagger) % step; q < starts.length; q += step) {
            if (fits(starts, q)) {
              starts[q]++;
            }
          }
        }
        attempt(starts);
      }
    }
  }

  private void dropLoads() {
    for (int q = 0; q < loads.length; q++) {
      if (loads[q] > 0) {
        int[] fewer = loads.clone();
        fewer[q]--;
        attempt(fewer);
      }
    }
  }

  private void vary() {
    int[] starts = loads.clone();
    int from = random.nextInt(starts.length);
    int kind = random.nextInt(3);
    if (kind != 0 && starts[from] > 0) {
      starts[from]--;
      from = Math.max(0, Math.min(starts.length - 1, from + random.nextInt(-3, 4)));
    }
    if (kind != 1 && fits(starts, from)) {
      starts[from]++;
    }
    attempt(starts);
  }

  private boolean fits(int[] starts, int slot) {
    int[] trial = starts.clone();
    trial[slot]++;
    return view.fits(trial);
  }

  private void attempt(int[] starts) {
    Timetable t = DayRun.run(view, starts);
    if (t.betterThan(best, view)) {
      best = t;
      loads = t.loads.clone();
    }
  }
}
