package kerfwright.practice.day;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * One moment at which something is to be decided: a demand begins, or a slot may start loads.
 *
 * @param atMin when
 * @param type the demand's type, or -1 for a slot
 * @param index the demand or the slot
 */
record DayEvent(int atMin, int type, int index) {
  private static final int MOST_CONTENTS = 300;

  /** All moments of a day in order; at one minute the loads come before the demands. */
  static List<DayEvent> of(DayView view) {
    List<DayEvent> all = new ArrayList<>();
    for (int q = 0; q < view.slots(); q++) {
      all.add(new DayEvent(view.slotMin[q], -1, q));
    }
    for (int k = 0; k < view.types.size(); k++) {
      for (int d = 0; d < view.types.get(k).demands; d++) {
        all.add(new DayEvent(view.types.get(k).startMin[d], k, d));
      }
    }
    all.sort(
        java.util.Comparator.comparingInt(DayEvent::atMin)
            .thenComparingInt(DayEvent::type)
            .thenComparingInt(DayEvent::index));
    return all;
  }

  /** Hands over the states this moment can lead to; false where there were too many for all. */
  boolean follow(DayView view, DayState s, Consumer<DayState> out) {
    if (type < 0) {
      return startLoads(view, s.settled(view, index), out);
    }
    serve(view, s, out);
    return true;
  }

  private void serve(DayView view, DayState s, Consumer<DayState> out) {
    TypeView t = view.types.get(type);
    out.accept(s.leaveShort(type, index));
    boolean[] tried = new boolean[t.stock.life() + 1];
    for (int u = 0; u < t.units; u++) {
      int left = s.left(type, u);
      if (left > 0 && s.cleanBy(type, u, atMin) && !tried[left]) {
        tried[left] = true;
        out.accept(s.serve(view, type, index, u));
      }
    }
  }

  /**
   * No load, or as many as sterilisers allow. A load that starts is filled as far as dirty
   * instruments go: a clean instrument is never worth less than a dirty one.
   */
  private boolean startLoads(DayView view, DayState s, Consumer<DayState> out) {
    out.accept(s);
    List<int[]> waiting = s.waiting(view, index);
    int free = view.slotFree[index] - s.running(view, index);
    int capacity = view.problem.loadCapacity();
    boolean all = true;
    for (int n = 1; n <= free && (n - 1) * capacity < waiting.size(); n++) {
      int size = Math.min(n * capacity, waiting.size());
      int loads = n;
      List<List<int[]>> contents = new ArrayList<>();
      all &= choose(s, waiting, 0, new ArrayList<>(), size, contents);
      contents.forEach(c -> out.accept(s.load(view, index, loads, c)));
    }
    return all;
  }

  /** Every different way to choose so many of those that wait, up to a limit. */
  private static boolean choose(
      DayState s,
      List<int[]> waiting,
      int from,
      List<int[]> chosen,
      int size,
      List<List<int[]>> contents) {
    if (chosen.size() == size) {
      contents.add(chosen);
      return true;
    }
    if (waiting.size() - from + chosen.size() < size) {
      return true;
    }
    if (contents.size() >= MOST_CONTENTS) {
      return false;
    }
    List<int[]> with = new ArrayList<>(chosen);
    with.add(waiting.get(from));
    boolean all = choose(s, waiting, from + 1, with, size, contents);
    int next = from + 1;
    while (next < waiting.size() && s.alike(waiting.get(from), waiting.get(next))) {
      next++;
    }
    return choose(s, waiting, next, chosen, size, contents) && all;
  }
}
