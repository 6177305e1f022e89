package kerfwright.schedule.search;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.PriorityQueue;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
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
    List<Pool> clean = pools(true);
    List<Pool> dirty = pools(false);
    type.inTime(d -> demand(d, clean, dirty), q -> slot(q, clean, dirty));
  }

  private List<Pool> pools(boolean clean) {
    return IntStream.rangeClosed(0, highest).mapToObj(r -> new Pool(clean, r)).toList();
  }

  private void demand(int d, List<Pool> clean, List<Pool> dirty) {
    shortage[d] = model.newBoolVar("");
    shortages.add(shortage[d]);
    List<Literal> one = new ArrayList<>(List.of(shortage[d]));
    for (int r = 1; r <= highest; r++) {
      if (clean.get(r).reachedBy(type.startMin[d])) {
        BoolVar served = model.newBoolVar("");
        x[d][r] = served;
        one.add(served);
        clean.get(r).take(served, type.startMin[d]);
        dirty.get(levels.afterUse(d, r)).coming.add(new Coming(served, type.readyMin[d]));
      }
    }
    model.addExactlyOne(one);
  }

  private void slot(int q, List<Pool> clean, List<Pool> dirty) {
    int most = mostInto(q);
    for (int r = 1; r <= highest && most > 0; r++) {
      if (dirty.get(r).reachedBy(view.slotMin[q])) {
        IntVar loaded = model.newIntVar(0, most, "");
        p[q][r] = loaded;
        dirty.get(r).take(loaded, view.slotMin[q]);
        clean.get(levels.afterLoad(q, r)).coming.add(new Coming(loaded, view.endOf(q)));
      }
    }
  }

  private record Coming(IntVar flow, int fromMin) {}

  /** Instruments of one level that lie clean, or dirty, gone through in time. */
  private final class Pool {
    private final boolean clean;
    private final int level;
    private final PriorityQueue<Coming> coming =
        new PriorityQueue<>(Comparator.comparingInt(Coming::fromMin));

    /** What was taken out less what came. */
    private final LinearExprBuilder taken = LinearExpr.newBuilder();

    private boolean came;

    Pool(boolean clean, int level) {
      this.clean = clean;
      this.level = level;
    }

    /** Whether any instrument can lie here by now. */
    boolean reachedBy(int nowMin) {
      for (Coming c = coming.peek(); c != null && c.fromMin() <= nowMin; c = coming.peek()) {
        taken.addTerm(c.flow(), -1);
        coming.remove();
        came = true;
      }
      return came || stock(nowMin) > 0;
    }

    /** The balance once this has been taken too. */
    void take(IntVar flow, int nowMin) {
      taken.add(flow);
      model.addLessOrEqual(LinearExpr.newBuilder().add(taken), stock(nowMin));
    }

    private int stock(int byMin) {
      int n = 0;
      for (int u = 0; u < type.units; u++) {
        boolean here = type.clean[u] == clean && levels.start()[u] == level;
        n += here && type.fromMin[u] <= byMin ? 1 : 0;
      }
      return n;
    }
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
