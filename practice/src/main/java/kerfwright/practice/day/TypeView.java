package kerfwright.practice.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * One type of a day in numbers. Demands that fixed trays fill are gone; they live on in the state
 * of the instruments.
 *
 * <p>{@code longest[d]} is the most uses one instrument could see from demand {@code d} on, itself
 * included, if a load started at every slot. An instrument with at least that many uses left cannot
 * run out any more and is like any other such instrument.
 */
final class TypeView {
  final Stock stock;
  final int units;

  /** Demands in order of start. */
  final int demands;

  final int[] startMin;
  final int[] endMin;
  final int[] readyMin;
  final int[] appointment;
  final int[] longest;

  /** Instruments: uses so far and left, and their state once the facts have happened. */
  final int[] uses;

  final int[] left;
  final boolean[] clean;
  final int[] fromMin;

  private final int[] longestAfterSlot;

  TypeView(DayProblem problem, Stock stock, int[] slotMin) {
    this.stock = stock;
    units = stock.uses().size();
    uses = new int[units];
    left = new int[units];
    clean = new boolean[units];
    fromMin = new int[units];
    for (int u = 0; u < units; u++) {
      InstrumentHistory h =
          InstrumentHistory.follow(
              problem.facts(),
              stock,
              u,
              problem.appointments(),
              problem.cleaningMin(),
              problem.loadMin(),
              new ArrayList<>());
      uses[u] = h.uses();
      left[u] = stock.life() - h.uses();
      clean[u] = h.clean();
      fromMin[u] = h.fromMin();
    }
    List<Integer> open = openDemands(problem);
    demands = open.size();
    startMin = new int[demands];
    endMin = new int[demands];
    readyMin = new int[demands];
    appointment = new int[demands];
    for (int d = 0; d < demands; d++) {
      Appointment a = problem.appointments().get(open.get(d));
      appointment[d] = open.get(d);
      startMin[d] = a.startMin();
      endMin[d] = a.endMin();
      readyMin[d] = a.endMin() + problem.cleaningMin();
    }
    longest = new int[demands];
    for (int d = demands - 1; d >= 0; d--) {
      int clean = Integer.MAX_VALUE;
      for (int t : slotMin) {
        if (t >= readyMin[d]) {
          clean = t + problem.loadMin();
          break;
        }
      }
      longest[d] = 1 + longestFrom(clean);
    }
    longestAfterSlot = new int[slotMin.length];
    for (int q = 0; q < slotMin.length; q++) {
      longestAfterSlot[q] = longestFrom(slotMin[q] + problem.loadMin());
    }
  }

  private List<Integer> openDemands(DayProblem problem) {
    Set<String> filled = new HashSet<>();
    for (TrayPlace tray : problem.facts().trays()) {
      if (tray.instrument().type().equals(stock.type())) {
        filled.add(tray.appointment());
      }
    }
    List<Integer> open = new ArrayList<>();
    for (int a = 0; a < problem.appointments().size(); a++) {
      Appointment x = problem.appointments().get(a);
      if (x.needs().contains(stock.type()) && !filled.contains(x.id())) {
        open.add(a);
      }
    }
    open.sort(
        Comparator.comparingInt((Integer a) -> problem.appointments().get(a).startMin())
            .thenComparingInt(a -> problem.appointments().get(a).endMin())
            .thenComparingInt(a -> a));
    return open;
  }

  /** Most uses one instrument clean at this minute could still see. */
  int longestFrom(int minute) {
    int best = 0;
    for (int d = demands - 1; d >= 0 && startMin[d] >= minute; d--) {
      best = Math.max(best, longest[d]);
    }
    return best;
  }

  int longestAfterSlot(int slot) {
    return longestAfterSlot[slot];
  }

  /** Difference of wear if nothing but the fixed facts happened. */
  int unevennessUnused() {
    int most = Integer.MIN_VALUE;
    int least = Integer.MAX_VALUE;
    for (int w : uses) {
      most = Math.max(most, w);
      least = Math.min(least, w);
    }
    return units == 0 ? 0 : most - least;
  }
}
