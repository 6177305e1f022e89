package kerfwright.practice.day;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToLongFunction;

/**
 * The flow of one type through a day, without names: instruments are told apart only by how many
 * uses they have left, and all with as many as the rest of the day can take count as one pool.
 *
 * <p>A clean instrument carries a level: its uses left, but never more than the rest of the day
 * could take when it last came clean. Symbols: {@code x[d][r]} demand d is served from clean level
 * r; {@code p[q][r]} instruments of dirty level r that go into a load at slot q. A use at demand d
 * leads from clean level r to dirty level min(r, longest[d]) - 1, a load at slot q from dirty level
 * r to clean level min(r, longest after q). One balance for each level:
 *
 * <pre>
 *   clean:  issued until d - back before d <= in stock
 *   dirty:  loaded until q - used and ready by q <= in stock
 * </pre>
 *
 * <p>Exact for shortages and loads, as capping a level gives up only uses that no instrument can
 * see any more: each solution is cut into the days of real instruments by {@link FlowReader}. Left
 * out: evenness of wear, see {@link WearFlow}. Derived here from the statement of the problem; no
 * published source.
 */
final class ReadyFlow implements TypeFlow {
  final TypeView type;
  final List<BoolVar> shortage = new ArrayList<>();

  /** {@code x[d][r - 1]}, {@code p[q][r - 1]}. */
  final BoolVar[][] x;

  final IntVar[][] p;

  private final Levels levels;
  private final List<LevelRow> rows = new ArrayList<>();
  private final CpModel model;
  private final DayView view;

  ReadyFlow(CpModel model, DayView view, TypeView type, boolean chained) {
    this.model = model;
    this.view = view;
    this.type = type;
    levels = new Levels(view, type);
    x = new BoolVar[type.demands][];
    p = new IntVar[view.slots()][];
    for (int d = 0; d < type.demands; d++) {
      serveOnce(d);
    }
    for (int q = 0; q < view.slots(); q++) {
      int most = mostInto(q);
      p[q] = new IntVar[most == 0 ? 0 : levels.highestDirty(q)];
      for (int r = 0; r < p[q].length; r++) {
        p[q][r] = model.newIntVar(0, most, "");
      }
    }
    for (int r = 1; r <= levels.highest(); r++) {
      cleanBalance(r, chained);
      dirtyBalance(r, chained);
    }
  }

  private void serveOnce(int d) {
    x[d] = new BoolVar[levels.highestClean(d)];
    List<Literal> one = new ArrayList<>();
    for (int r = 0; r < x[d].length; r++) {
      x[d][r] = model.newBoolVar("");
      one.add(x[d][r]);
    }
    BoolVar s = model.newBoolVar("");
    shortage.add(s);
    one.add(s);
    model.addExactlyOne(one);
  }

  /** Most instruments that could go into loads at a slot, for the link to the loads. */
  int mostInto(int slot) {
    if (type.longestAfterSlot(slot) == 0) {
      return 0;
    }
    int n = 0;
    for (int d = 0; d < type.demands; d++) {
      n += type.readyMin[d] <= view.slotMin[slot] ? 1 : 0;
    }
    for (int u = 0; u < type.units; u++) {
      n += !type.clean[u] && type.fromMin[u] <= view.slotMin[slot] ? 1 : 0;
    }
    return Math.min(type.units, n);
  }

  private int stock(boolean clean, int r, int byMin) {
    int n = 0;
    for (int u = 0; u < type.units; u++) {
      n += type.clean[u] == clean && levels.start(u) == r && type.fromMin[u] <= byMin ? 1 : 0;
    }
    return n;
  }

  private void cleanBalance(int r, boolean chained) {
    Balance clean = new Balance(chained);
    int q = 0;
    for (int d = 0; d < type.demands; d++) {
      if (x[d].length < r) {
        continue;
      }
      for (; q < view.slots() && view.endOf(q) <= type.startMin[d]; q++) {
        for (int from = 1; from <= p[q].length; from++) {
          if (levels.afterLoad(q, from) == r) {
            clean.plus.add(p[q][from - 1]);
          }
        }
      }
      clean.minus.add(x[d][r - 1]);
      clean.close(stock(true, r, type.startMin[d]));
    }
  }

  private void dirtyBalance(int r, boolean chained) {
    Balance dirty = new Balance(chained);
    boolean[] came = new boolean[type.demands];
    for (int q = 0; q < view.slots(); q++) {
      if (p[q].length < r) {
        continue;
      }
      for (int d = 0; d < type.demands; d++) {
        if (!came[d] && type.readyMin[d] <= view.slotMin[q]) {
          came[d] = true;
          for (int from = 1; from <= x[d].length; from++) {
            if (levels.afterUse(d, from) == r) {
              dirty.plus.add(x[d][from - 1]);
            }
          }
        }
      }
      dirty.minus.add(p[q][r - 1]);
      dirty.close(stock(false, r, view.slotMin[q]));
    }
  }

  /**
   * What comes in less what goes out, never below zero. Either every row sums over all that
   * happened so far, which propagates strongly, or a level is carried on from row to row, which
   * keeps rows short and the relaxations of big days fast.
   */
  private final class Balance {
    private final List<IntVar> plus = new ArrayList<>();
    private final List<IntVar> minus = new ArrayList<>();
    private final boolean chained;
    private int stockCounted;

    Balance(boolean chained) {
      this.chained = chained;
    }

    void close(int stockByNow) {
      LinearExprBuilder sum = LinearExpr.newBuilder();
      plus.forEach(sum::add);
      minus.forEach(v -> sum.addTerm(v, -1));
      if (!chained) {
        model.addGreaterOrEqual(sum, -stockByNow);
        return;
      }
      IntVar level = model.newIntVar(0, (long) type.units + type.demands, "");
      int more = stockByNow - stockCounted;
      model.addEquality(sum.add(more), level);
      rows.add(new LevelRow(level, List.copyOf(plus), List.copyOf(minus), more));
      stockCounted = stockByNow;
      plus.clear();
      minus.clear();
      plus.add(level);
    }
  }

  private record LevelRow(IntVar level, List<IntVar> plus, List<IntVar> minus, int more) {}

  /** Hints the flow a timetable makes. */
  @Override
  public void hint(Timetable t, int k, FlowHint hint) {
    for (IntVar[] vars : p) {
      for (IntVar v : vars) {
        hint.set(v, 0);
      }
    }
    int[] level = new int[type.units];
    Arrays.setAll(level, levels::start);
    int q = 0;
    for (int d = 0; d <= type.demands; d++) {
      for (; q < view.slots() && (d == type.demands || view.endOf(q) <= type.startMin[d]); q++) {
        for (int[] ku : t.inside.get(q)) {
          int r = ku[0] == k ? level[ku[1]] : 0;
          if (r > 0 && r <= p[q].length) {
            hint.set(p[q][r - 1], hint.of(p[q][r - 1]) + 1);
            level[ku[1]] = levels.afterLoad(q, r);
          }
        }
      }
      if (d < type.demands) {
        int u = t.unit[k][d];
        int r = u == Timetable.SHORT ? 0 : level[u];
        for (int i = 0; i < x[d].length; i++) {
          hint.set(x[d][i], i == r - 1 ? 1 : 0);
        }
        hint.set(shortage.get(d), u == Timetable.SHORT ? 1 : 0);
        if (u != Timetable.SHORT) {
          level[u] = levels.afterUse(d, r);
        }
      }
    }
    for (LevelRow row : rows) {
      long sum = row.more();
      for (IntVar v : row.plus()) {
        sum += hint.of(v);
      }
      for (IntVar v : row.minus()) {
        sum -= hint.of(v);
      }
      hint.set(row.level(), sum);
    }
  }

  @Override
  public FlowReader.Ladder ladder() {
    return levels;
  }

  /** Clean level each served demand draws from; 0 where short. */
  @Override
  public int[] served(ToLongFunction<IntVar> value) {
    int[] from = new int[type.demands];
    for (int d = 0; d < from.length; d++) {
      for (int r = 0; r < x[d].length; r++) {
        if (value.applyAsLong(x[d][r]) == 1) {
          from[d] = r + 1;
        }
      }
    }
    return from;
  }

  /** How many of each dirty level go into a load at each slot. */
  @Override
  public int[][] loaded(ToLongFunction<IntVar> value) {
    int[][] n = new int[p.length][];
    for (int q = 0; q < p.length; q++) {
      n[q] = new int[p[q].length];
      for (int r = 0; r < n[q].length; r++) {
        n[q][r] = (int) value.applyAsLong(p[q][r]);
      }
    }
    return n;
  }
}
