package kerfwright.practice.day;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToLongFunction;

/**
 * The flow of one type with the exact number of uses left of each instrument, so that wear at the
 * end of the day is known: the model of evenness.
 *
 * <p>Symbols as in {@link ReadyFlow}, but r is exact: {@code x[d][r]}, {@code p[q][r]}, one balance
 * for each r. {@code n[r]} instruments end the day with r uses left; {@code up[r]} says that some
 * instrument ends with r or more, {@code down[r]} that some ends with r or fewer. Unevenness is the
 * highest r minus the lowest, which equals the difference of wear as all share one life.
 */
final class WearFlow implements TypeFlow {
  final TypeView type;
  final List<BoolVar> shortage = new ArrayList<>();
  final LinearExprBuilder unevenness = LinearExpr.newBuilder();
  final List<Map<Integer, BoolVar>> x = new ArrayList<>();
  final List<Map<Integer, IntVar>> p = new ArrayList<>();
  private final CpModel model;
  private final DayView view;
  private final Map<Integer, IntVar> ends = new TreeMap<>();
  private final Map<Integer, BoolVar> up = new TreeMap<>();
  private final Map<Integer, BoolVar> down = new TreeMap<>();
  private final int[] mostInto;

  WearFlow(CpModel model, DayView view, TypeView type) {
    this.model = model;
    this.view = view;
    this.type = type;
    mostInto = new int[view.slots()];
    serveOnce();
    loadVariables();
    TreeSet<Integer> rs = new TreeSet<>();
    for (int r : type.left) {
      rs.add(r);
    }
    x.forEach(m -> m.keySet().forEach(r -> rs.add(r)));
    x.forEach(m -> m.keySet().forEach(r -> rs.add(r - 1)));
    for (int r : rs) {
      cleanBalance(r);
      dirtyBalance(r);
    }
    if (type.units > 0) {
      evenness(rs);
    }
  }

  /** Most uses an instrument can have seen before demand d, if a load started at every slot. */
  private int[] usesBefore() {
    int[] before = new int[type.demands];
    for (int d = 0; d < type.demands; d++) {
      for (int e = 0; e < d; e++) {
        if (before[e] + 1 > before[d] && loadBetween(type.readyMin[e], type.startMin[d])) {
          before[d] = before[e] + 1;
        }
      }
    }
    return before;
  }

  private boolean loadBetween(int ready, int start) {
    for (int q = 0; q < view.slots(); q++) {
      if (view.slotMin[q] >= ready) {
        return view.endOf(q) <= start;
      }
    }
    return false;
  }

  private void serveOnce() {
    int[] before = usesBefore();
    for (int d = 0; d < type.demands; d++) {
      Map<Integer, BoolVar> byLeft = new TreeMap<>();
      List<Literal> one = new ArrayList<>();
      for (int left : type.left) {
        for (int r = left; r >= Math.max(1, left - before[d]); r--) {
          byLeft.computeIfAbsent(r, i -> model.newBoolVar(""));
        }
      }
      one.addAll(byLeft.values());
      BoolVar s = model.newBoolVar("");
      shortage.add(s);
      one.add(s);
      model.addExactlyOne(one);
      x.add(byLeft);
    }
  }

  private void loadVariables() {
    for (int q = 0; q < view.slots(); q++) {
      Map<Integer, IntVar> byLeft = new TreeMap<>();
      TreeSet<Integer> rs = new TreeSet<>();
      int most = 0;
      for (int d = 0; d < type.demands; d++) {
        if (type.readyMin[d] <= view.slotMin[q]) {
          most++;
          x.get(d).keySet().stream().filter(r -> r > 1).forEach(r -> rs.add(r - 1));
        }
      }
      for (int u = 0; u < type.units; u++) {
        if (!type.clean[u] && type.fromMin[u] <= view.slotMin[q] && type.left[u] > 0) {
          most++;
          rs.add(type.left[u]);
        }
      }
      mostInto[q] = Math.min(most, type.units);
      if (type.longestAfterSlot(q) > 0) {
        int limit = mostInto[q];
        rs.forEach(r -> byLeft.put(r, model.newIntVar(0, limit, "")));
      }
      p.add(byLeft);
    }
  }

  int mostInto(int slot) {
    return mostInto[slot];
  }

  private int stock(boolean clean, int r, int byMin) {
    int n = 0;
    for (int u = 0; u < type.units; u++) {
      n += type.clean[u] == clean && type.left[u] == r && type.fromMin[u] <= byMin ? 1 : 0;
    }
    return n;
  }

  private void cleanBalance(int r) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    int q = 0;
    for (int d = 0; d < type.demands; d++) {
      IntVar served = x.get(d).get(r);
      if (served == null) {
        continue;
      }
      for (; q < view.slots() && view.endOf(q) <= type.startMin[d]; q++) {
        IntVar back = p.get(q).get(r);
        if (back != null) {
          sum.addTerm(back, -1);
        }
      }
      sum.add(served);
      model.addLessOrEqual(LinearExpr.newBuilder().add(sum), stock(true, r, type.startMin[d]));
    }
  }

  private void dirtyBalance(int r) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    boolean[] came = new boolean[type.demands];
    for (int q = 0; q < view.slots(); q++) {
      IntVar loaded = p.get(q).get(r);
      if (loaded == null) {
        continue;
      }
      for (int d = 0; d < type.demands; d++) {
        IntVar used = x.get(d).get(r + 1);
        if (!came[d] && type.readyMin[d] <= view.slotMin[q]) {
          came[d] = true;
          if (used != null) {
            sum.addTerm(used, -1);
          }
        }
      }
      sum.add(loaded);
      model.addLessOrEqual(LinearExpr.newBuilder().add(sum), stock(false, r, view.slotMin[q]));
    }
  }

  private void evenness(TreeSet<Integer> rs) {
    int lowest = rs.first();
    int highest = rs.last();
    LinearExprBuilder total = LinearExpr.newBuilder();
    for (int r : rs) {
      IntVar n = model.newIntVar(0, type.units, "");
      ends.put(r, n);
      LinearExprBuilder sum = LinearExpr.newBuilder();
      long inStock = 0;
      for (int left : type.left) {
        inStock += left == r ? 1 : 0;
      }
      sum.add(inStock);
      for (Map<Integer, BoolVar> m : x) {
        if (m.containsKey(r)) {
          sum.addTerm(m.get(r), -1);
        }
        if (m.containsKey(r + 1)) {
          sum.add(m.get(r + 1));
        }
      }
      model.addEquality(sum, n);
      total.addTerm(n, r);
    }
    for (int r = lowest; r <= highest; r++) {
      up.put(r, model.newBoolVar(""));
      down.put(r, model.newBoolVar(""));
      if (r > lowest) {
        model.addImplication(up.get(r), up.get(r - 1));
        model.addImplication(down.get(r - 1), down.get(r));
        unevenness.add(up.get(r));
      }
    }
    for (int r = lowest; r < highest; r++) {
      unevenness.add(down.get(r));
    }
    unevenness.add(lowest - highest);
    for (int r : rs) {
      linkEnds(r);
    }
    meanLiesBetween(total, lowest, highest);
  }

  private void linkEnds(int r) {
    LinearExprBuilder above = LinearExpr.newBuilder();
    LinearExprBuilder below = LinearExpr.newBuilder();
    ends.forEach((e, n) -> (e >= r ? above : below).add(n));
    below.add(ends.get(r));
    model.addLessOrEqual(above, LinearExpr.term(up.get(r), type.units));
    model.addLessOrEqual(below, LinearExpr.term(down.get(r), type.units));
  }

  /** The mean of uses left lies between the extremes: implied, and it lifts the relaxation. */
  private void meanLiesBetween(LinearExprBuilder total, int lowest, int highest) {
    LinearExprBuilder most = LinearExpr.newBuilder().add((long) type.units * lowest);
    LinearExprBuilder least = LinearExpr.newBuilder().add((long) type.units * highest);
    for (int r = lowest; r < highest; r++) {
      most.addTerm(up.get(r + 1), type.units);
      least.addTerm(down.get(r), -type.units);
    }
    model.addLessOrEqual(total, most);
    model.addGreaterOrEqual(total, least);
  }

  /** Levels are exact uses left. */
  @Override
  public FlowReader.Ladder ladder() {
    return new FlowReader.Ladder() {
      @Override
      public int start(int unit) {
        return type.left[unit];
      }

      @Override
      public int afterUse(int demand, int level) {
        return level - 1;
      }

      @Override
      public int afterLoad(int slot, int level) {
        return level;
      }
    };
  }

  /** Uses left before each served demand; 0 where short. */
  @Override
  public int[] served(ToLongFunction<IntVar> value) {
    int[] left = new int[type.demands];
    for (int d = 0; d < left.length; d++) {
      int at = d;
      x.get(d).forEach((r, v) -> left[at] += value.applyAsLong(v) == 1 ? r : 0);
    }
    return left;
  }

  /** How many with each number of uses left go into a load at each slot. */
  @Override
  public int[][] loaded(ToLongFunction<IntVar> value) {
    int[][] n = new int[p.size()][];
    for (int q = 0; q < n.length; q++) {
      int highest = p.get(q).keySet().stream().mapToInt(r -> r).max().orElse(0);
      n[q] = new int[highest];
      int[] row = n[q];
      p.get(q).forEach((r, v) -> row[r - 1] = (int) value.applyAsLong(v));
    }
    return n;
  }

  /** Hints the flow a timetable makes. */
  @Override
  public void hint(Timetable t, int k, FlowHint hint) {
    int[] left = type.left.clone();
    p.forEach(m -> m.values().forEach(v -> hint.set(v, 0)));
    int q = 0;
    for (int d = 0; d <= type.demands; d++) {
      for (; q < view.slots() && (d == type.demands || view.endOf(q) <= type.startMin[d]); q++) {
        for (int[] ku : t.inside.get(q)) {
          IntVar v = ku[0] == k ? p.get(q).get(left[ku[1]]) : null;
          if (v != null) {
            hint.set(v, hint.of(v) + 1);
          }
        }
      }
      if (d < type.demands) {
        int u = t.unit[k][d];
        x.get(d).forEach((r, v) -> hint.set(v, u >= 0 && left[u] == r ? 1 : 0));
        hint.set(shortage.get(d), u == Timetable.SHORT ? 1 : 0);
        if (u != Timetable.SHORT) {
          left[u]--;
        }
      }
    }
    int most = java.util.Arrays.stream(left).max().orElse(0);
    int least = java.util.Arrays.stream(left).min().orElse(0);
    up.forEach((r, v) -> hint.set(v, most >= r ? 1 : 0));
    down.forEach((r, v) -> hint.set(v, least <= r ? 1 : 0));
    ends.forEach((r, v) -> hint.set(v, java.util.Arrays.stream(left).filter(l -> l == r).count()));
  }
}
