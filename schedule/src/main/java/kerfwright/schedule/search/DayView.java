package kerfwright.schedule.search;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
  private final Map<String, Integer> places = new HashMap<>();

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
    day.inOrder().forEach(a -> places.put(a.id(), places.size()));
    fixedLoads = day.facts().loads().size();
    types = day.stock().stream().map(s -> new TypeView(day, s, slotMin)).toList();
  }

  /** Where an appointment stands in the order of time. */
  int place(String appointment) {
    return places.getOrDefault(appointment, 0);
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

  /** Loads that may start at a slot after those started before it. */
  int free(int[] starts, int slot) {
    int free = slotFree[slot];
    for (int p = firstOverlapping(slot); p < slot; p++) {
      free -= starts[p];
    }
    return Math.max(0, free);
  }
}
