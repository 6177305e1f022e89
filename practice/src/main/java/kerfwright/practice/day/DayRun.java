package kerfwright.practice.day;

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
  private static final int NEVER = Integer.MAX_VALUE;

  private final DayView view;
  private final Timetable out;

  /** Per type and instrument: clean from, ready for a load from, uses left, demand it serves. */
  private final int[][] cleanFrom;

  private final int[][] readyFrom;
  private final int[][] left;
  private final int[][] serving;

  private DayRun(DayView view) {
    this.view = view;
    out = new Timetable(view);
    int n = view.types.size();
    cleanFrom = new int[n][];
    readyFrom = new int[n][];
    left = new int[n][];
    serving = new int[n][];
    for (int k = 0; k < n; k++) {
      TypeView type = view.types.get(k);
      cleanFrom[k] = new int[type.units];
      readyFrom[k] = new int[type.units];
      left[k] = type.left.clone();
      serving[k] = new int[type.units];
      Arrays.fill(serving[k], -1);
      for (int u = 0; u < type.units; u++) {
        cleanFrom[k][u] = type.clean[u] ? type.fromMin[u] : NEVER;
        readyFrom[k][u] = type.clean[u] ? NEVER : type.fromMin[u];
      }
    }
  }

  /** The day with at most these loads at each slot. */
  static Timetable run(DayView view, int[] loads) {
    DayRun run = new DayRun(view);
    int[] next = new int[view.types.size()];
    for (int q = 0; q < view.slots(); q++) {
      run.serveBefore(next, view.slotMin[q]);
      if (loads[q] > 0) {
        run.load(q, loads[q]);
      }
    }
    run.serveBefore(next, NEVER);
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
    TypeView type = view.types.get(k);
    int best = -1;
    int latest = -1;
    for (int u = 0; u < type.units; u++) {
      if (cleanFrom[k][u] <= type.startMin[d] && left[k][u] > 0) {
        if (best < 0 || left[k][u] > left[k][best]) {
          best = u;
        }
      } else if (serving[k][u] >= 0
          && readyFrom[k][u] > type.readyMin[d]
          && (latest < 0 || readyFrom[k][u] > readyFrom[k][latest])) {
        latest = u;
      }
    }
    if (best < 0 && latest >= 0) {
      best = latest;
      out.unit[k][serving[k][best]] = Timetable.SHORT;
      left[k][best]++;
    }
    if (best >= 0) {
      out.unit[k][d] = best;
      left[k][best]--;
      cleanFrom[k][best] = NEVER;
      readyFrom[k][best] = type.readyMin[d];
      serving[k][best] = d;
    }
  }

  private void load(int q, int loads) {
    int now = view.slotMin[q];
    List<int[]> waiting = new java.util.ArrayList<>();
    for (int k = 0; k < view.types.size(); k++) {
      TypeView type = view.types.get(k);
      if (type.longestAfterSlot(q) == 0) {
        continue;
      }
      int covered = 0;
      for (int u = 0; u < type.units; u++) {
        covered += cleanFrom[k][u] != NEVER && left[k][u] > 0 ? 1 : 0;
      }
      int first = 0;
      while (first < type.demands && type.startMin[first] < now) {
        first++;
      }
      for (int u = 0; u < type.units; u++) {
        if (readyFrom[k][u] <= now && left[k][u] > 0) {
          int d = first + covered++;
          waiting.add(new int[] {k, u, d < type.demands ? type.startMin[d] : NEVER});
        }
      }
    }
    waiting.sort(Comparator.comparingInt(w -> w[2]));
    int room = loads * view.problem.loadCapacity();
    for (int[] w : waiting.subList(0, Math.min(room, waiting.size()))) {
      out.inside.get(q).add(new int[] {w[0], w[1]});
      cleanFrom[w[0]][w[1]] = view.endOf(q);
      readyFrom[w[0]][w[1]] = NEVER;
      serving[w[0]][w[1]] = -1;
    }
    out.loads[q] = loads;
  }
}
