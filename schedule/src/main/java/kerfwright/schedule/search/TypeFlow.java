package kerfwright.schedule.search;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;

/**
 * The flow of one type through a day: instruments are told apart by their {@link Levels} alone.
 *
 * <p>Symbols: {@code x[d][r]} demand d is served from clean level r; {@code p[q][r]} instruments of
 * dirty level r that go into a load at slot q. A use leads from a clean to a dirty level, a load
 * back. One balance for each level:
 *
 * <pre>
 *   clean:  issued until d - back before d <= in stock
 *   dirty:  loaded until q - used and ready by q <= in stock
 * </pre>
 *
 * <p>Exact: each solution is cut into the days of real instruments by {@link #read}. Derived here
 * from the statement of the problem; no published source.
 */
final class TypeFlow {
  final int k;
  final TypeView type;
  final LinearExprBuilder shortages = LinearExpr.newBuilder();

  /** Null where no instrument can be at that level by then. */
  final @Nullable BoolVar[][] x;

  final @Nullable IntVar[][] p;
  final Levels levels;
  final BoolVar[] shortage;
  private final int highest;
  private final CpModel model;
  private final DayView view;

  TypeFlow(CpModel model, DayView view, int k, Function<TypeView, Levels> kind) {
    this.model = model;
    this.view = view;
    this.k = k;
    type = view.types.get(k);
    levels = kind.apply(type);
    highest = levels.highest();
    x = new BoolVar[type.demands][highest + 1];
    p = new IntVar[view.slots()][highest + 1];
    shortage = new BoolVar[type.demands];
    variables();
    for (int d = 0; d < type.demands; d++) {
      List<Literal> one = new ArrayList<>();
      shortage[d] = model.newBoolVar("");
      shortages.add(shortage[d]);
      one.add(shortage[d]);
      Arrays.stream(x[d]).filter(Objects::nonNull).forEach(one::add);
      model.addExactlyOne(one);
    }
    for (int r = 1; r <= highest; r++) {
      cleanBalance(r);
      dirtyBalance(r);
    }
  }

  /** Makes the variables of every level that can be reached in time. */
  private void variables() {
    int[] clean = new int[highest + 1];
    int[] dirty = new int[highest + 1];
    Arrays.fill(clean, TypeRun.NEVER);
    Arrays.fill(dirty, TypeRun.NEVER);
    for (int u = 0; u < type.units; u++) {
      int[] from = type.clean[u] ? clean : dirty;
      from[levels.start()[u]] = Math.min(from[levels.start()[u]], type.fromMin[u]);
    }
    type.inTime(
        d -> {
          for (int r = 1; r <= highest; r++) {
            if (clean[r] <= type.startMin[d]) {
              x[d][r] = model.newBoolVar("");
              int to = levels.afterUse(d, r);
              dirty[to] = Math.min(dirty[to], type.readyMin[d]);
            }
          }
        },
        q -> {
          int most = mostInto(q);
          for (int r = 1; r <= highest && most > 0; r++) {
            if (dirty[r] <= view.slotMin[q]) {
              p[q][r] = model.newIntVar(0, most, "");
              int to = levels.afterLoad(q, r);
              clean[to] = Math.min(clean[to], view.endOf(q));
            }
          }
        });
  }

  /** Instruments that go into loads at a slot. */
  LinearExprBuilder into(int slot) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    Arrays.stream(p[slot]).filter(Objects::nonNull).forEach(sum::add);
    return sum;
  }

  /** Most instruments that could go into loads at a slot. */
  int mostInto(int slot) {
    if (type.longestAfterSlot[slot] == 0) {
      return 0;
    }
    int now = view.slotMin[slot];
    int n = (int) Arrays.stream(type.readyMin).filter(ready -> ready <= now).count();
    for (int u = 0; u < type.units; u++) {
      n += !type.clean[u] && type.fromMin[u] <= now ? 1 : 0;
    }
    return Math.min(type.units, n);
  }

  private int stock(boolean clean, int r, int byMin) {
    int n = 0;
    for (int u = 0; u < type.units; u++) {
      n += type.clean[u] == clean && levels.start()[u] == r && type.fromMin[u] <= byMin ? 1 : 0;
    }
    return n;
  }

  private void cleanBalance(int r) {
    LinearExprBuilder issued = LinearExpr.newBuilder();
    int q = 0;
    for (int d = 0; d < type.demands; d++) {
      if (x[d][r] == null) {
        continue;
      }
      for (; q < view.slots() && view.endOf(q) <= type.startMin[d]; q++) {
        for (int from = 1; from <= highest; from++) {
          if (p[q][from] != null && levels.afterLoad(q, from) == r) {
            issued.addTerm(p[q][from], -1);
          }
        }
      }
      issued.add(x[d][r]);
      model.addLessOrEqual(copy(issued), stock(true, r, type.startMin[d]));
    }
  }

  private void dirtyBalance(int r) {
    LinearExprBuilder loaded = LinearExpr.newBuilder();
    boolean[] came = new boolean[type.demands];
    for (int q = 0; q < view.slots(); q++) {
      if (p[q][r] == null) {
        continue;
      }
      for (int d = 0; d < type.demands; d++) {
        if (!came[d] && type.readyMin[d] <= view.slotMin[q]) {
          came[d] = true;
          for (int from = 1; from <= highest; from++) {
            if (x[d][from] != null && levels.afterUse(d, from) == r) {
              loaded.addTerm(x[d][from], -1);
            }
          }
        }
      }
      loaded.add(p[q][r]);
      model.addLessOrEqual(copy(loaded), stock(false, r, view.slotMin[q]));
    }
  }

  private static LinearExprBuilder copy(LinearExprBuilder sum) {
    return LinearExpr.newBuilder().add(sum);
  }

  /** Hints the flow a timetable makes. */
  void hint(Timetable t) {
    int[] level = levels.start().clone();
    type.inTime(
        d -> {
          int u = t.unit[k][d];
          int from = u == Timetable.SHORT ? 0 : level[u];
          model.addHint(shortage[d], from == 0 ? 1 : 0);
          for (int r = 1; r <= highest; r++) {
            hint(x[d][r], r == from ? 1 : 0);
          }
          if (from > 0) {
            level[u] = levels.afterUse(d, from);
          }
        },
        q -> {
          int[] n = new int[highest + 1];
          for (Timetable.Inside i : t.inside.get(q)) {
            if (i.type() == k) {
              int from = level[i.unit()];
              n[from]++;
              level[i.unit()] = from == 0 ? 0 : levels.afterLoad(q, from);
            }
          }
          for (int r = 1; r <= highest; r++) {
            hint(p[q][r], n[r]);
          }
        });
  }

  private void hint(@Nullable IntVar v, int value) {
    if (v != null) {
      model.addHint(v, value);
    }
  }

  /**
   * Cuts a solution into the days of real instruments: going through the day in time, a demand
   * takes a clean instrument of the level the flow says, and a load a dirty one.
   */
  void read(ToLongFunction<IntVar> value, Timetable out) {
    TypeRun run = new TypeRun(view, type);
    int[] level = levels.start().clone();
    Arrays.fill(out.unit[k], Timetable.SHORT);
    out.unload(k);
    type.inTime(
        d -> {
          for (int r = 1; r <= highest; r++) {
            if (times(value, x[d][r]) == 1) {
              int u = any(level, r, i -> run.serves(i, d));
              out.unit[k][d] = u;
              run.use(u, d);
              level[u] = levels.afterUse(d, r);
            }
          }
        },
        q -> {
          for (int r = highest; r >= 1; r--) {
            for (long n = times(value, p[q][r]); n > 0; n--) {
              int u = any(level, r, i -> run.loads(i, q));
              out.inside.get(q).add(new Timetable.Inside(k, u));
              run.load(u, q);
              level[u] = levels.afterLoad(q, r);
            }
          }
        });
  }

  private static long times(ToLongFunction<IntVar> value, @Nullable IntVar v) {
    return v == null ? 0 : value.applyAsLong(v);
  }

  private int any(int[] level, int from, IntPredicate free) {
    for (int u = 0; u < type.units; u++) {
      if (level[u] == from && free.test(u)) {
        return u;
      }
    }
    throw new IllegalStateException(
        "no " + type.stock.type() + " at level " + from + ": the flow has no paths");
  }
}
