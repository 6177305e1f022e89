package kerfwright.schedule.search;

import java.util.List;
import java.util.TreeSet;
import kerfwright.schedule.Day;

/**
 * A day with names replaced by numbers and fixed facts worked in: what is left to decide.
 *
 * <p>A load may start at {@code slotMin[q]}, and at most {@code slotFree[q]} loads that are not
 * fixed may run at that minute.
 */
final class DayView {
  final Day day;
  final List<TypeView> types;
  final int[] slotMin;
  final int[] slotFree;
  final int fixedLoads;

  DayView(Day day) {
    this.day = day;
    TreeSet<Integer> starts = new TreeSet<>(day.extraStartsMin());
    for (int t = 0; t <= day.lengthMin(); t += day.loadGridMin()) {
      starts.add(t);
    }
    slotMin = starts.stream().filter(day::mayStartAt).mapToInt(t -> t).toArray();
    slotFree = new int[slotMin.length];
    for (int q = 0; q < slotMin.length; q++) {
      int running = day.running(day.facts().loads(), slotMin[q]);
      slotFree[q] = Math.max(0, day.sterilisers() - running);
    }
    fixedLoads = day.facts().loads().size();
    types = day.stock().stream().map(s -> new TypeView(day, s, slotMin)).toList();
  }

  int slots() {
    return slotMin.length;
  }

  int endOf(int slot) {
    return slotMin[slot] + day.loadMin();
  }

  /** First slot whose load would still run while one started at this slot starts. */
  int firstOverlapping(int slot) {
    int p = slot;
    while (p > 0 && endOf(p - 1) > slotMin[slot]) {
      p--;
    }
    return p;
  }

  /** Whether the sterilisers can run loads with these starts. */
  boolean fits(int[] starts) {
    for (int q = 0; q < starts.length; q++) {
      int running = 0;
      for (int p = firstOverlapping(q); p <= q; p++) {
        running += starts[p];
      }
      if (running > slotFree[q]) {
        return false;
      }
    }
    return true;
  }
}
