package kerfwright.schedule.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Runs a day forward with given load starts, deciding greedily at each minute.
 *
 * <p>A demand takes the least worn clean instrument. Where none is clean, it may take over the
 * instrument of a running appointment that would give it back later (the exchange that is optimal
 * for plain interval scheduling). A load takes first what the next uncovered demands wait for.
 *
 * <p>Where a plan is followed, its instruments and loads come first, and what it cannot have takes
 * a clean instrument the plan asks for last.
 */
final class DayRun {
  private final DayView view;
  private final @Nullable Timetable kept;
  private final Timetable out;
  private final List<TypeRun> runs;

  /** Per type and instrument: the demand it serves, or -1. */
  private final int[][] serving;

  private DayRun(DayView view, @Nullable Timetable kept) {
    this.view = view;
    this.kept = kept;
    out = new Timetable(view);
    runs = view.types.stream().map(type -> new TypeRun(view, type)).toList();
    serving = new int[runs.size()][];
    for (int k = 0; k < serving.length; k++) {
      serving[k] = new int[view.types.get(k).units];
      Arrays.fill(serving[k], -1);
    }
  }

  /** The day with at most these loads at each slot. */
  static Timetable run(DayView view, int[] loads) {
    return new DayRun(view, null).run(loads);
  }

  /** A plan as closely as its day, changed since, can follow it. */
  static Timetable followed(DayView view, Timetable plan) {
    return new DayRun(view, plan).run(plan.loads);
  }

  private Timetable run(int[] loads) {
    int[] next = new int[view.types.size()];
    for (int q = 0; q < view.slots(); q++) {
      serveBefore(next, view.slotMin[q]);
      out.loads[q] = Math.min(loads[q], view.free(out.loads, q));
      if (out.loads[q] > 0) {
        load(q, next);
      }
    }
    serveBefore(next, TypeRun.NEVER);
    out.trim(view);
    return out;
  }

  private void serveBefore(int[] next, int minute) {
    for (int k = 0; k < next.length; k++) {
      TypeView type = view.types.get(k);
      while (next[k] < type.demands && type.startMin[next[k]] < minute) {
        serve(k, next[k]++);
      }
    }
  }

  private void serve(int k, int d) {
    TypeRun run = runs.get(k);
    int best = -1;
    int latest = -1;
    for (int u = 0; u < serving[k].length; u++) {
      if (run.serves(u, d)) {
        best = best < 0 || rather(k, d, u, best) ? u : best;
      } else if (serving[k][u] >= 0
          && run.readyFrom(u) > run.type.readyMin[d]
          && (latest < 0 || run.readyFrom(u) > run.readyFrom(latest))) {
        latest = u;
      }
    }
    if (kept != null) {
      boolean spare = best >= 0 && kept.nextOf(k, best, d + 1) == TypeRun.NEVER;
      best = kept.unit[k][d] == Timetable.SHORT && !spare ? -1 : best;
    } else if (best < 0 && latest >= 0) {
      best = latest;
      out.unit[k][serving[k][best]] = Timetable.SHORT;
      run.left[best]++;
    }
    if (best >= 0) {
      out.unit[k][d] = best;
      run.use(best, d);
      serving[k][best] = d;
    }
  }

  /** Whether a demand takes the first of two rather than the second. */
  private boolean rather(int k, int d, int u, int than) {
    if (kept != null) {
      int wanted = kept.unit[k][d];
      int later = Integer.compare(kept.nextOf(k, u, d + 1), kept.nextOf(k, than, d + 1));
      if (u == wanted || than == wanted || later != 0) {
        return u == wanted || than != wanted && later > 0;
      }
    }
    return runs.get(k).left[u] > runs.get(k).left[than];
  }

  private record Waiting(Timetable.Inside one, int wantedMin) {}

  private void load(int q, int[] next) {
    List<Waiting> waiting = new ArrayList<>();
    for (int k = 0; k < runs.size(); k++) {
      TypeRun run = runs.get(k);
      int units = run.type.longestAfterSlot[q] == 0 ? 0 : run.type.units;
      int wanted = next[k];
      for (int u = 0; u < units; u++) {
        wanted += run.covers(u) ? 1 : 0;
      }
      for (int u = 0; u < units; u++) {
        if (run.loads(u, q) && run.left[u] > 0) {
          boolean soon = wanted < run.type.demands;
          waiting.add(
              new Waiting(
                  new Timetable.Inside(k, u), soon ? run.type.startMin[wanted] : TypeRun.NEVER));
          wanted++;
        }
      }
    }
    waiting.sort(
        Comparator.comparing((Waiting w) -> kept == null || !kept.inside.get(q).contains(w.one()))
            .thenComparingInt(Waiting::wantedMin));
    int room = Math.min(out.loads[q] * view.day.loadCapacity(), waiting.size());
    for (Waiting w : waiting.subList(0, room)) {
      out.inside.get(q).add(w.one());
      runs.get(w.one().type()).load(w.one().unit(), q);
      serving[w.one().type()][w.one().unit()] = -1;
    }
  }
}
