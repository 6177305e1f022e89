package kerfwright.schedule.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Runs a day forward with given load starts, deciding greedily at each minute.
 *
 * <p>A demand takes the least worn clean instrument. Where none is clean, it may take over the
 * instrument of a running appointment that would give it back later (the exchange that is optimal
 * for plain interval scheduling). A load takes first what the next uncovered demands wait for.
 */
final class DayRun {
  private final DayView view;
  private final Timetable out;
  private final List<TypeRun> runs;

  /** Per type and instrument: the demand it serves, or -1. */
  private final int[][] serving;

  private DayRun(DayView view) {
    this.view = view;
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
    DayRun run = new DayRun(view);
    int[] next = new int[view.types.size()];
    for (int q = 0; q < view.slots(); q++) {
      run.serveBefore(next, view.slotMin[q]);
      if (loads[q] > 0) {
        run.load(q, loads[q], next);
      }
    }
    run.serveBefore(next, TypeRun.NEVER);
    run.out.trim(view);
    return run.out;
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
        best = best < 0 || run.left[u] > run.left[best] ? u : best;
      } else if (serving[k][u] >= 0
          && run.readyFrom(u) > run.type.readyMin[d]
          && (latest < 0 || run.readyFrom(u) > run.readyFrom(latest))) {
        latest = u;
      }
    }
    if (best < 0 && latest >= 0) {
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

  private record Waiting(int type, int unit, int wantedMin) {}

  private void load(int q, int loads, int[] next) {
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
          waiting.add(new Waiting(k, u, soon ? run.type.startMin[wanted] : TypeRun.NEVER));
          wanted++;
        }
      }
    }
    waiting.sort(Comparator.comparingInt(Waiting::wantedMin));
    int room = Math.min(loads * view.day.loadCapacity(), waiting.size());
    for (Waiting w : waiting.subList(0, room)) {
      out.inside.get(q).add(new Timetable.Inside(w.type(), w.unit()));
      runs.get(w.type()).load(w.unit(), q);
      serving[w.type()][w.unit()] = -1;
    }
    out.loads[q] = loads;
  }
}
