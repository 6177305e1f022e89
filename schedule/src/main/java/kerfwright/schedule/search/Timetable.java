package kerfwright.schedule.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.GoalResult;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.Referee;
import kerfwright.schedule.Shortage;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.TrayPlace;

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

  /** {@code inside[q]}: what goes in. */
  final List<List<Inside>> inside = new ArrayList<>();

  /** One instrument in a load: its type and its number. */
  record Inside(int type, int unit) {}

  Timetable(DayView view) {
    unit = new int[view.types.size()][];
    for (int k = 0; k < unit.length; k++) {
      unit[k] = new int[view.types.get(k).demands];
      Arrays.fill(unit[k], SHORT);
    }
    loads = new int[view.slots()];
    for (int q = 0; q < loads.length; q++) {
      inside.add(new ArrayList<>());
    }
  }

  Timetable copy(DayView view) {
    Timetable t = new Timetable(view);
    for (int k = 0; k < unit.length; k++) {
      t.unit[k] = unit[k].clone();
    }
    for (int q = 0; q < loads.length; q++) {
      t.loads[q] = loads[q];
      t.inside.get(q).addAll(inside.get(q));
    }
    return t;
  }

  /**
   * A plan in the numbers of a day; what the day does not know, or holds for fixed, is left out.
   */
  static Timetable of(DayView view, DayPlan plan) {
    Map<String, Integer> laid = new HashMap<>();
    plan.trays()
        .forEach(
            t -> laid.put(t.appointment() + "\n" + t.instrument().type(), t.instrument().index()));
    Map<String, Integer> types = new HashMap<>();
    Timetable t = new Timetable(view);
    for (int k = 0; k < t.unit.length; k++) {
      TypeView type = view.types.get(k);
      types.put(type.stock.type(), k);
      for (int d = 0; d < type.demands; d++) {
        String need = type.appointment.get(d).id() + "\n" + type.stock.type();
        t.unit[k][d] = laid.getOrDefault(need, SHORT);
      }
    }
    for (SteriliserLoad load : plan.loads()) {
      int q = Arrays.binarySearch(view.slotMin, load.startMin());
      if (q >= 0 && !view.day.facts().loads().contains(load)) {
        t.loads[q]++;
        load.instruments().stream()
            .filter(ref -> types.containsKey(ref.type()))
            .forEach(
                ref ->
                    t.inside
                        .get(q)
                        .add(new Inside(types.getOrDefault(ref.type(), 0), ref.index())));
      }
    }
    return t;
  }

  /** Removes what no later use needs, and then the loads that became superfluous. */
  void trim(DayView view) {
    int capacity = view.day.loadCapacity();
    for (int q = 0; q < loads.length; q++) {
      int end = view.endOf(q);
      inside.get(q).removeIf(i -> !usedAfter(view.types.get(i.type()), i, end));
      loads[q] = Math.min(loads[q], (inside.get(q).size() + capacity - 1) / capacity);
    }
  }

  private boolean usedAfter(TypeView type, Inside i, int minute) {
    for (int d = type.demands - 1; d >= 0 && type.startMin[d] >= minute; d--) {
      if (unit[i.type()][d] == i.unit()) {
        return true;
      }
    }
    return false;
  }

  /** Takes a type out of all loads. */
  void unload(int k) {
    inside.forEach(load -> load.removeIf(i -> i.type() == k));
  }

  int shortages() {
    return (int) Arrays.stream(unit).flatMapToInt(Arrays::stream).filter(u -> u == SHORT).count();
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

  /** When the instrument serves again from a demand on, by number of the demand. */
  int nextOf(int type, int instrument, int demand) {
    for (int d = demand; d < unit[type].length; d++) {
      if (unit[type][d] == instrument) {
        return d;
      }
    }
    return TypeRun.NEVER;
  }

  /** Needs left open, by time. */
  List<Shortage> shortagesIn(DayView view) {
    List<Shortage> all = new ArrayList<>();
    for (int k = 0; k < unit.length; k++) {
      TypeView type = view.types.get(k);
      for (int d = 0; d < type.demands; d++) {
        if (unit[k][d] == SHORT) {
          all.add(new Shortage(type.appointment.get(d).id(), type.stock.type()));
        }
      }
    }
    all.sort(Comparator.comparingInt(s -> view.place(s.appointment())));
    return all;
  }

  /** Writes the plan out with names, fixed facts included, and has it judged. */
  DayPlan toPlan(DayView view, List<GoalResult> goals, String solver) {
    List<TrayPlace> trays = new ArrayList<>(view.day.facts().trays());
    Map<String, Integer> order = new HashMap<>();
    for (int k = 0; k < unit.length; k++) {
      TypeView type = view.types.get(k);
      order.put(type.stock.type(), k);
      for (int d = 0; d < type.demands; d++) {
        if (unit[k][d] != SHORT) {
          trays.add(TrayPlace.of(type.appointment.get(d).id(), type.stock.type(), unit[k][d]));
        }
      }
    }
    trays.sort(
        Comparator.comparingInt((TrayPlace t) -> view.place(t.appointment()))
            .thenComparingInt(t -> order.getOrDefault(t.instrument().type(), 0)));
    List<SteriliserLoad> out = new ArrayList<>(view.day.facts().loads());
    for (int q = 0; q < loads.length; q++) {
      List<InstrumentRef> all =
          inside.get(q).stream()
              .map(i -> new InstrumentRef(view.types.get(i.type()).stock.type(), i.unit()))
              .sorted()
              .toList();
      int from = 0;
      for (int n = loads[q]; n > 0; n--) {
        int size = (all.size() - from + n - 1) / n;
        out.add(new SteriliserLoad(view.slotMin[q], all.subList(from, from + size)));
        from += size;
      }
    }
    out.sort(Comparator.comparingInt(SteriliserLoad::startMin));
    DayPlan plan = new DayPlan(trays, out, shortagesIn(view), goals, solver);
    Referee.Verdict verdict = Referee.judge(view.day, plan);
    if (!verdict.valid()) {
      throw new IllegalStateException("The plan breaks rules: " + verdict.errors());
    }
    return plan;
  }
}
