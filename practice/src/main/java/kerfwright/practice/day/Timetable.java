package kerfwright.practice.day;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A plan in numbers: who serves each demand, and which instruments go into a load at each slot. A
 * slot may hold several loads; they share the list and are told apart only when written out.
 */
final class Timetable {
  /** Stands for "short". */
  static final int SHORT = -1;

  /** {@code unit[k][d]}: the instrument of type k that serves demand d, or {@link #SHORT}. */
  final int[][] unit;

  /** {@code loads[q]}: loads that start at slot q. */
  final int[] loads;

  /** {@code inside[q]}: pairs (type, instrument). */
  final List<List<int[]>> inside;

  Timetable(DayView view) {
    unit = new int[view.types.size()][];
    for (int k = 0; k < unit.length; k++) {
      unit[k] = new int[view.types.get(k).demands];
      Arrays.fill(unit[k], SHORT);
    }
    loads = new int[view.slots()];
    inside = new ArrayList<>();
    for (int q = 0; q < view.slots(); q++) {
      inside.add(new ArrayList<>());
    }
  }

  Timetable copy(DayView view) {
    Timetable t = new Timetable(view);
    for (int k = 0; k < unit.length; k++) {
      t.unit[k] = unit[k].clone();
    }
    System.arraycopy(loads, 0, t.loads, 0, loads.length);
    for (int q = 0; q < loads.length; q++) {
      t.inside.get(q).addAll(inside.get(q));
    }
    return t;
  }

  /** Removes what no later use needs, and then the loads that became superfluous. */
  void trim(DayView view) {
    int capacity = view.problem.loadCapacity();
    for (int q = 0; q < loads.length; q++) {
      int slot = q;
      inside.get(q).removeIf(ku -> !usedAfter(view, ku[0], ku[1], view.endOf(slot)));
      loads[q] = Math.min(loads[q], (inside.get(q).size() + capacity - 1) / capacity);
    }
  }

  private boolean usedAfter(DayView view, int k, int u, int minute) {
    TypeView type = view.types.get(k);
    for (int d = type.demands - 1; d >= 0 && type.startMin[d] >= minute; d--) {
      if (unit[k][d] == u) {
        return true;
      }
    }
    return false;
  }

  int shortages() {
    int n = 0;
    for (int[] row : unit) {
      for (int u : row) {
        n += u == SHORT ? 1 : 0;
      }
    }
    return n;
  }

  int newLoads() {
    return Arrays.stream(loads).sum();
  }

  int wear(DayView view) {
    int sum = 0;
    for (int k = 0; k < unit.length; k++) {
      sum += wear(view.types.get(k), unit[k]);
    }
    return sum;
  }

  static int wear(TypeView type, int[] served) {
    if (type.units == 0) {
      return 0;
    }
    int[] total = type.uses.clone();
    for (int u : served) {
      if (u != SHORT) {
        total[u]++;
      }
    }
    return Arrays.stream(total).max().orElse(0) - Arrays.stream(total).min().orElse(0);
  }

  /** Whether this is better than the other in the strict order of goals. */
  boolean betterThan(Timetable other, DayView view) {
    int c = Integer.compare(shortages(), other.shortages());
    c = c != 0 ? c : Integer.compare(newLoads(), other.newLoads());
    c = c != 0 ? c : Integer.compare(wear(view), other.wear(view));
    return c < 0;
  }

  /** Writes the plan out with names, fixed facts included. */
  DayPlan toPlan(DayView view, List<GoalResult> goals, String solver) {
    DayProblem problem = view.problem;
    List<TrayPlace> trays = new ArrayList<>(problem.facts().trays());
    List<Shortage> shortages = new ArrayList<>();
    for (int k = 0; k < unit.length; k++) {
      TypeView type = view.types.get(k);
      for (int d = 0; d < type.demands; d++) {
        String id = problem.appointments().get(type.appointment[d]).id();
        if (unit[k][d] == SHORT) {
          shortages.add(new Shortage(id, type.stock.type()));
        } else {
          trays.add(TrayPlace.of(id, type.stock.type(), unit[k][d]));
        }
      }
    }
    DayOrder order = new DayOrder(problem);
    trays.sort(order.trays());
    shortages.sort(order.shortages());
    List<SteriliserLoad> out = new ArrayList<>(problem.facts().loads());
    for (int q = 0; q < loads.length; q++) {
      List<InstrumentRef> all =
          inside.get(q).stream()
              .map(ku -> new InstrumentRef(view.types.get(ku[0]).stock.type(), ku[1]))
              .sorted()
              .collect(Collectors.toList());
      int from = 0;
      for (int n = loads[q]; n > 0; n--) {
        int size = (all.size() - from + n - 1) / n;
        out.add(new SteriliserLoad(view.slotMin[q], all.subList(from, from + size)));
        from += size;
      }
    }
    out.sort(Comparator.comparingInt(SteriliserLoad::startMin));
    return new DayPlan(trays, out, shortages, goals, solver);
  }
}
