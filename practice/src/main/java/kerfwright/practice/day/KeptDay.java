package kerfwright.practice.day;

import java.util.HashSet;
import java.util.Set;

/** Follows an old plan through a changed day: what still holds, and a quick repair of the rest. */
final class KeptDay {
  private static final int NEVER = Integer.MAX_VALUE;

  private final DayView view;
  private final Timetable old;

  KeptDay(DayView view, Timetable old) {
    this.view = view;
    this.old = old;
  }

  /** Types for which the old plan cannot be followed any more. */
  Set<Integer> broken() {
    Set<Integer> broken = new HashSet<>();
    for (int k = 0; k < view.types.size(); k++) {
      if (!new Walk(k).follows()) {
        broken.add(k);
      }
    }
    return broken;
  }

  /** Keeps what can be kept; a broken need takes a spare clean instrument or goes short. */
  Timetable repair(Set<Integer> broken) {
    Timetable t = old.copy(view);
    for (int k : broken) {
      int type = k;
      t.inside.forEach(content -> content.removeIf(ku -> ku[0] == type));
      new Walk(k).repairInto(t);
    }
    t.trim(view);
    return t;
  }

  /** One type from now to the evening. */
  private final class Walk {
    private final int k;
    private final TypeView type;
    private final int[] cleanFrom;
    private final int[] readyFrom;
    private final int[] left;

    Walk(int k) {
      this.k = k;
      type = view.types.get(k);
      left = type.left.clone();
      cleanFrom = new int[type.units];
      readyFrom = new int[type.units];
      for (int u = 0; u < type.units; u++) {
        cleanFrom[u] = type.clean[u] ? type.fromMin[u] : NEVER;
        readyFrom[u] = type.clean[u] ? NEVER : type.fromMin[u];
      }
    }

    boolean follows() {
      int next = 0;
      for (int q = 0; q <= view.slots(); q++) {
        int until = q == view.slots() ? NEVER : view.slotMin[q];
        for (; next < type.demands && type.startMin[next] < until; next++) {
          int u = old.unit[k][next];
          if (u != Timetable.SHORT && !use(u, next)) {
            return false;
          }
        }
        if (q < view.slots()) {
          for (int[] ku : old.inside.get(q)) {
            if (ku[0] == k && !wash(ku[1], q)) {
              return false;
            }
          }
        }
      }
      return true;
    }

    private boolean use(int u, int d) {
      if (cleanFrom[u] > type.startMin[d] || left[u] == 0) {
        return false;
      }
      left[u]--;
      cleanFrom[u] = NEVER;
      readyFrom[u] = type.readyMin[d];
      return true;
    }

    private boolean wash(int u, int q) {
      if (readyFrom[u] > view.slotMin[q]) {
        return false;
      }
      cleanFrom[u] = view.endOf(q);
      readyFrom[u] = NEVER;
      return true;
    }

    void repairInto(Timetable t) {
      int next = 0;
      for (int q = 0; q <= view.slots(); q++) {
        int until = q == view.slots() ? NEVER : view.slotMin[q];
        for (; next < type.demands && type.startMin[next] < until; next++) {
          int wanted = old.unit[k][next];
          int u = wanted != Timetable.SHORT && use(wanted, next) ? wanted : spare(next);
          t.unit[k][next] = u;
        }
        int room = q < view.slots() ? t.loads[q] * view.problem.loadCapacity() : 0;
        for (int u = 0; u < type.units && q < view.slots(); u++) {
          if (t.inside.get(q).size() < room && left[u] > 0 && wash(u, q)) {
            t.inside.get(q).add(new int[] {k, u});
          }
        }
      }
    }

    /** A clean instrument the old plan asks for last, used at once. */
    private int spare(int d) {
      int best = Timetable.SHORT;
      int bestNext = -1;
      for (int u = 0; u < type.units; u++) {
        if (cleanFrom[u] <= type.startMin[d] && left[u] > 0 && nextWanted(u, d) > bestNext) {
          best = u;
          bestNext = nextWanted(u, d);
        }
      }
      if (best != Timetable.SHORT) {
        use(best, d);
      }
      return best;
    }

    private int nextWanted(int u, int d) {
      for (int e = d + 1; e < type.demands; e++) {
        if (old.unit[k][e] == u) {
          return type.startMin[e];
        }
      }
      return NEVER;
    }
  }
}
