package kerfwright.practice.day;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;

/**
 * The broken types of a day, instrument by instrument, with the rest held. Minimises in strict
 * order, by weights: shortages, trays changed, loads, instruments put into loads.
 *
 * <p>Symbols: {@code x[d][u]} instrument u serves demand d; {@code z[u][q]} it goes into a load at
 * slot q. Two uses of one instrument need a load between them.
 */
final class RepairModel {
  private static final int LOAD = 5_000;
  private static final int CHANGE = 40 * LOAD;

  private final CpModel model = new CpModel();
  private final DayView view;
  private final Timetable kept;
  private final Set<Integer> broken;
  private final LinearExprBuilder cost = LinearExpr.newBuilder();
  private final LinearExprBuilder[] content;
  private final IntVar[] starts;
  private final List<OneType> types = new ArrayList<>();

  RepairModel(DayView view, Timetable kept, Set<Integer> broken) {
    this.view = view;
    this.kept = kept;
    this.broken = new TreeSet<>(broken);
    starts = new IntVar[view.slots()];
    content = new LinearExprBuilder[view.slots()];
    loads();
    int demands = this.broken.stream().mapToInt(k -> view.types.get(k).demands).sum();
    for (int k : this.broken) {
      types.add(new OneType(k, (long) CHANGE * (demands + 1)));
    }
    for (int q = 0; q < starts.length; q++) {
      content[q].add(others(q));
      model.addLessOrEqual(content[q], LinearExpr.term(starts[q], view.problem.loadCapacity()));
    }
    model.minimize(cost);
  }

  private long others(int q) {
    return kept.inside.get(q).stream().filter(ku -> !broken.contains(ku[0])).count();
  }

  private void loads() {
    for (int q = 0; q < starts.length; q++) {
      content[q] = LinearExpr.newBuilder();
      long least = others(q) == 0 ? 0 : kept.loads[q];
      starts[q] = model.newIntVar(least, Math.max(least, view.slotFree[q]), "");
      cost.addTerm(starts[q], LOAD);
      LinearExprBuilder running = LinearExpr.newBuilder();
      for (int p = view.firstOverlapping(q); p <= q; p++) {
        running.add(starts[p]);
      }
      model.addLessOrEqual(running, view.slotFree[q]);
    }
  }

  /** The best repair found in time, or null. */
  @Nullable Timetable solve(Search search, Timetable hint, double seconds) {
    FlowHint values = new FlowHint();
    for (int q = 0; q < starts.length; q++) {
      values.set(starts[q], hint.loads[q]);
    }
    types.forEach(t -> t.hint(hint, values));
    values.giveTo(model);
    Timetable[] best = new Timetable[1];
    search.run(model, List.of(), seconds, value -> best[0] = read(value), b -> {});
    return best[0];
  }

  private Timetable read(ToLongFunction<IntVar> value) {
    Timetable t = kept.copy(view);
    for (int q = 0; q < starts.length; q++) {
      t.loads[q] = (int) value.applyAsLong(starts[q]);
      t.inside.get(q).removeIf(ku -> broken.contains(ku[0]));
    }
    types.forEach(type -> type.read(value, t));
    t.trim(view);
    return t;
  }

  private final class OneType {
    private final int k;
    private final TypeView type;
    private final BoolVar[][] x;
    private final BoolVar[][] z;

    OneType(int k, long shortageCost) {
      this.k = k;
      type = view.types.get(k);
      x = new BoolVar[type.demands][type.units];
      z = new BoolVar[type.units][view.slots()];
      for (int u = 0; u < type.units; u++) {
        for (int q = 0; q < view.slots(); q++) {
          z[u][q] = model.newBoolVar("");
          content[q].add(z[u][q]);
          cost.add(z[u][q]);
        }
      }
      for (int d = 0; d < type.demands; d++) {
        LinearExprBuilder one = LinearExpr.newBuilder();
        for (int u = 0; u < type.units; u++) {
          x[d][u] = model.newBoolVar("");
          one.add(x[d][u]);
          // a shortage costs; so does any instrument other than the one laid out so far
          boolean other = kept.unit[k][d] != Timetable.SHORT && kept.unit[k][d] != u;
          cost.addTerm(x[d][u], (other ? CHANGE : 0) - shortageCost);
        }
        model.addLessOrEqual(one, 1);
      }
      for (int u = 0; u < type.units; u++) {
        oneInstrument(u);
      }
    }

    private void oneInstrument(int u) {
      LinearExprBuilder uses = LinearExpr.newBuilder();
      for (int d = 0; d < type.demands; d++) {
        uses.add(x[d][u]);
        if (!type.clean[u] || type.fromMin[u] > type.startMin[d]) {
          LinearExprBuilder washed = washes(u, type.clean[u] ? 0 : type.fromMin[u], d);
          model.addLessOrEqual(x[d][u], type.clean[u] ? LinearExpr.constant(0) : washed);
        }
        for (int e = d + 1; e < type.demands; e++) {
          LinearExprBuilder both = LinearExpr.newBuilder().add(x[d][u]).add(x[e][u]);
          model.addLessOrEqual(both, washes(u, type.readyMin[d], e).add(1));
        }
        for (int q = 0; q < view.slots(); q++) {
          if (view.slotMin[q] < type.readyMin[d] && type.startMin[d] < view.endOf(q)) {
            model.addLessOrEqual(LinearExpr.newBuilder().add(x[d][u]).add(z[u][q]), 1);
          }
        }
      }
      model.addLessOrEqual(uses, type.left[u]);
    }

    private LinearExprBuilder washes(int u, int from, int d) {
      LinearExprBuilder sum = LinearExpr.newBuilder();
      for (int q = 0; q < view.slots(); q++) {
        if (view.slotMin[q] >= from && view.endOf(q) <= type.startMin[d]) {
          sum.add(z[u][q]);
        }
      }
      return sum;
    }

    void hint(Timetable t, FlowHint values) {
      for (int d = 0; d < type.demands; d++) {
        for (int u = 0; u < type.units; u++) {
          values.set(x[d][u], t.unit[k][d] == u ? 1 : 0);
        }
      }
      for (int q = 0; q < view.slots(); q++) {
        for (int u = 0; u < type.units; u++) {
          values.set(z[u][q], 0);
        }
        for (int[] ku : t.inside.get(q)) {
          if (ku[0] == k) {
            values.set(z[ku[1]][q], 1);
          }
        }
      }
    }

    void read(ToLongFunction<IntVar> value, Timetable t) {
      for (int d = 0; d < type.demands; d++) {
        t.unit[k][d] = Timetable.SHORT;
        for (int u = 0; u < type.units; u++) {
          if (value.applyAsLong(x[d][u]) == 1) {
            t.unit[k][d] = u;
          }
        }
      }
      for (int q = 0; q < view.slots(); q++) {
        for (int u = 0; u < type.units; u++) {
          if (value.applyAsLong(z[u][q]) == 1) {
            t.inside.get(q).add(new int[] {k, u});
          }
        }
      }
    }
  }
}
