package kerfwright.practice.day;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where everything stands at one moment of a day, and how it came there.
 *
 * <p>An instrument is one long: uses left, clean or dirty, and the minute from which that counts.
 * Two states are equal if the instruments of each type are the same up to their order and the same
 * loads are running.
 */
final class DayState {
  private static final int DIRTY = 1 << 20;

  private final long[][] units;
  private final int[] lastLoads;
  private final int shortages;
  private final int loads;
  private final @Nullable DayState before;

  /** What led here: {type, demand, unit} or {-1, slot, loads, type, unit, ...}. */
  private final int[] step;

  private final long[][] sorted;
  private final int hash;

  private DayState(
      long[][] units,
      int[] lastLoads,
      int shortages,
      int loads,
      @Nullable DayState before,
      int[] step) {
    this.units = units;
    this.lastLoads = lastLoads;
    this.shortages = shortages;
    this.loads = loads;
    this.before = before;
    this.step = step;
    sorted = new long[units.length][];
    for (int k = 0; k < units.length; k++) {
      sorted[k] = units[k].clone();
      Arrays.sort(sorted[k]);
    }
    hash = 31 * Arrays.deepHashCode(sorted) + Arrays.hashCode(lastLoads);
  }

  static DayState start(DayView view) {
    long[][] units = new long[view.types.size()][];
    for (int k = 0; k < units.length; k++) {
      TypeView t = view.types.get(k);
      units[k] = new long[t.units];
      for (int u = 0; u < t.units; u++) {
        units[k][u] = code(t.left[u], t.clean[u], t.fromMin[u]);
      }
    }
    return new DayState(units, new int[0], 0, 0, null, new int[0]);
  }

  private static long code(int left, boolean clean, int from) {
    return ((long) left << 32) | (clean ? 0 : DIRTY) | from;
  }

  int left(int k, int u) {
    return (int) (units[k][u] >> 32);
  }

  private int from(int k, int u) {
    return (int) units[k][u] & (DIRTY - 1);
  }

  private boolean dirty(int k, int u) {
    return (units[k][u] & DIRTY) != 0;
  }

  boolean cleanBy(int k, int u, int minute) {
    return !dirty(k, u) && from(k, u) <= minute;
  }

  boolean alike(int[] a, int[] b) {
    return a[0] == b[0] && left(a[0], a[1]) == left(b[0], b[1]);
  }

  private long[][] with(int k, int u, long code) {
    long[][] copy = units.clone();
    copy[k] = units[k].clone();
    copy[k][u] = code;
    return copy;
  }

  DayState leaveShort(int k, int d) {
    return new DayState(
        units, lastLoads, shortages + 1, loads, this, new int[] {k, d, Timetable.SHORT});
  }

  DayState serve(DayView view, int k, int d, int u) {
    long code = code(left(k, u) - 1, false, view.types.get(k).readyMin[d]);
    return new DayState(with(k, u, code), lastLoads, shortages, loads, this, new int[] {k, d, u});
  }

  /** The same state with everything forgotten that no longer tells states apart at this slot. */
  DayState settled(DayView view, int slot) {
    int now = view.slotMin[slot];
    long[][] copy = new long[units.length][];
    for (int k = 0; k < units.length; k++) {
      copy[k] = units[k].clone();
      for (int u = 0; u < copy[k].length; u++) {
        if (from(k, u) <= now) {
          copy[k][u] = code(left(k, u), !dirty(k, u), 0);
        }
      }
    }
    int[] still = Arrays.stream(lastLoads).filter(t -> t + view.problem.loadMin() > now).toArray();
    return new DayState(copy, still, shortages, loads, this, new int[0]);
  }

  /** Loads started earlier that still run when one starts at this slot. */
  int running(DayView view, int slot) {
    int n = 0;
    for (int t : lastLoads) {
      n += t + view.problem.loadMin() > view.slotMin[slot] ? 1 : 0;
    }
    return n;
  }

  /** Dirty instruments that may go in now and have uses left, alike ones together. */
  List<int[]> waiting(DayView view, int slot) {
    List<int[]> out = new ArrayList<>();
    for (int k = 0; k < units.length; k++) {
      for (int u = 0; u < units[k].length; u++) {
        if (dirty(k, u)
            && left(k, u) > 0
            && from(k, u) <= view.slotMin[slot]
            && view.types.get(k).longestAfterSlot(slot) > 0) {
          out.add(new int[] {k, u});
        }
      }
    }
    out.sort(
        Comparator.comparingInt((int[] ku) -> ku[0]).thenComparingInt(ku -> left(ku[0], ku[1])));
    return out;
  }

  DayState load(DayView view, int slot, int count, List<int[]> chosen) {
    long[][] copy = units.clone();
    int[] how = new int[3 + 2 * chosen.size()];
    how[0] = -1;
    how[1] = slot;
    how[2] = count;
    int at = 3;
    for (int[] ku : chosen) {
      if (copy[ku[0]] == units[ku[0]]) {
        copy[ku[0]] = units[ku[0]].clone();
      }
      copy[ku[0]][ku[1]] = code(left(ku[0], ku[1]), true, view.endOf(slot));
      how[at++] = ku[0];
      how[at++] = ku[1];
    }
    int[] starts =
        Arrays.stream(lastLoads)
            .filter(t -> t + view.problem.loadMin() > view.slotMin[slot])
            .toArray();
    int[] now = Arrays.copyOf(starts, starts.length + count);
    Arrays.fill(now, starts.length, now.length, view.slotMin[slot]);
    return new DayState(copy, now, shortages, loads + count, this, how);
  }

  /** The better of two ways into one state; the first where they are level. */
  DayState cheaper(DayState other) {
    int c = Integer.compare(shortages, other.shortages);
    c = c != 0 ? c : Integer.compare(loads, other.loads);
    return c <= 0 ? this : other;
  }

  /**
   * Smaller is kept first where states must be dropped: few shortages, loads, dirty instruments.
   */
  int promise() {
    int waiting = 0;
    for (int k = 0; k < units.length; k++) {
      for (int u = 0; u < units[k].length; u++) {
        waiting += dirty(k, u) && left(k, u) > 0 ? 1 : 0;
      }
    }
    return 100 * shortages + 20 * loads + 4 * waiting;
  }

  Timetable timetable(DayView view) {
    Timetable t = new Timetable(view);
    for (DayState s = this; s != null; s = s.before) {
      if (s.step.length == 0) {
        continue;
      }
      if (s.step[0] >= 0) {
        t.unit[s.step[0]][s.step[1]] = s.step[2];
      } else {
        t.loads[s.step[1]] = s.step[2];
        for (int i = 3; i < s.step.length; i += 2) {
          t.inside.get(s.step[1]).add(new int[] {s.step[i], s.step[i + 1]});
        }
      }
    }
    t.trim(view);
    return t;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof DayState s
        && Arrays.equals(lastLoads, s.lastLoads)
        && Arrays.deepEquals(sorted, s.sorted);
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
