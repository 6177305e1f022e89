package kerfwright.schedule.search;

import java.util.SplittableRandom;

/**
 * A good plan at once: load starts are varied, each choice is run forward by {@link DayRun}, and
 * the best is kept. The same seed gives the same plan.
 */
final class FirstPlan {
  private final DayView view;
  private Timetable best;

  /** The best of the days on which no steriliser rests, from each possible offset. */
  FirstPlan(DayView view) {
    this.view = view;
    best = DayRun.run(view, new int[view.slots()]);
    int step = (view.day.loadMin() + view.day.loadGridMin() - 1) / view.day.loadGridMin();
    for (int offset = 0; offset < step; offset++) {
      for (int stagger = 0; stagger < step; stagger++) {
        int[] starts = new int[view.slots()];
        for (int s = 0; s < view.day.sterilisers(); s++) {
          for (int q = (offset + s * stagger) % step; q < starts.length; q += step) {
            starts[q]++;
          }
        }
        attempt(starts);
      }
    }
  }

  Timetable best() {
    return best;
  }

  /** Adds, drops or moves a load so many times. */
  Timetable varied(int seed, int times) {
    SplittableRandom random = new SplittableRandom(seed);
    int slots = view.slots();
    for (int i = 0; i < times && slots > 0; i++) {
      int[] starts = best.loads.clone();
      int at = random.nextInt(slots);
      int kind = random.nextInt(3);
      if (kind != 0 && starts[at] > 0) {
        starts[at]--;
        at = Math.max(0, Math.min(slots - 1, at + random.nextInt(-3, 4)));
      }
      starts[at] += kind == 1 ? 0 : 1;
      attempt(starts);
    }
    return best;
  }

  private void attempt(int[] starts) {
    Timetable t = DayRun.run(view, starts);
    best = t.betterThan(best, view) ? t : best;
  }
}
