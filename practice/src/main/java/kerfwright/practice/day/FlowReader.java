package kerfwright.practice.day;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Cuts the nameless flow of one type into the days of real instruments: going through the day in
 * time, a demand takes a clean instrument of the level the flow says, and a load a dirty one.
 */
final class FlowReader {
  private static final int NEVER = Integer.MAX_VALUE;

  private final DayView view;
  private final int k;
  private final TypeView type;
  private final Ladder ladder;
  private final int[] level;
  private final int[] cleanFrom;
  private final int[] readyFrom;

  /** How levels change; the reader follows the same rules as the model. */
  interface Ladder {
    int start(int unit);

    int afterUse(int demand, int level);

    int afterLoad(int slot, int level);
  }

  FlowReader(DayView view, int k, Ladder ladder) {
    this.view = view;
    this.k = k;
    type = view.types.get(k);
    this.ladder = ladder;
    level = new int[type.units];
    Arrays.setAll(level, ladder::start);
    cleanFrom = new int[type.units];
    readyFrom = new int[type.units];
    for (int u = 0; u < type.units; u++) {
      cleanFrom[u] = type.clean[u] ? type.fromMin[u] : NEVER;
      readyFrom[u] = type.clean[u] ? NEVER : type.fromMin[u];
    }
  }

  void read(int[] served, int[][] loaded, Timetable out) {
    int next = 0;
    for (int q = 0; q <= view.slots(); q++) {
      int until = q == view.slots() ? NEVER : view.slotMin[q];
      for (; next < type.demands && type.startMin[next] < until; next++) {
        if (served[next] > 0) {
          serve(next, served[next], out);
        }
      }
      if (q < view.slots()) {
        for (int r = loaded[q].length; r >= 1; r--) {
          for (int n = loaded[q][r - 1]; n > 0; n--) {
            load(q, r, out);
          }
        }
      }
    }
  }

  private void serve(int d, int from, Timetable out) {
    int u = any(from, i -> cleanFrom[i] <= type.startMin[d]);
    out.unit[k][d] = u;
    level[u] = ladder.afterUse(d, from);
    cleanFrom[u] = NEVER;
    readyFrom[u] = type.readyMin[d];
  }

  private void load(int q, int from, Timetable out) {
    int u = any(from, i -> readyFrom[i] <= view.slotMin[q]);
    out.inside.get(q).add(new int[] {k, u});
    level[u] = ladder.afterLoad(q, from);
    cleanFrom[u] = view.endOf(q);
    readyFrom[u] = NEVER;
  }

  private int any(int from, IntPredicate free) {
    for (int u = 0; u < type.units; u++) {
      if (level[u] == from && free.test(u)) {
        return u;
      }
    }
    throw new IllegalStateException(
        "no " + type.stock.type() + " at level " + from + ": the flow has no paths");
  }
}
