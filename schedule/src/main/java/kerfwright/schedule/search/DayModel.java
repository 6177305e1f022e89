package kerfwright.schedule.search;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;

/**
 * A day as flows of types that share loads, for all types or for some with the rest held as a
 * timetable has it.
 *
 * <p>{@code starts[q]} loads start at slot q; {@code any[q]} whether one does. Each type's content
 * is linked to {@code any} by itself, which makes the relaxation strong where capacity is ample.
 */
final class DayModel {
  final CpModel model = new CpModel();
  final List<TypeFlow> flows = new ArrayList<>();
  private final IntVar[] starts;
  private final BoolVar[] any;
  private final Timetable held;
  private final DayView view;

  /** The whole day. */
  DayModel(DayView view, Function<TypeView, Levels> levels) {
    this(view, levels, IntStream.range(0, view.types.size()).boxed().toList(), new Timetable(view));
  }

  /** Some types, with the others held where they lie in the loads of a timetable. */
  DayModel(DayView view, Function<TypeView, Levels> levels, List<Integer> types, Timetable held) {
    this.view = view;
    this.held = held;
    types.forEach(k -> flows.add(new TypeFlow(model, view, k, levels)));
    starts = new IntVar[view.slots()];
    any = new BoolVar[view.slots()];
    for (int q = 0; q < starts.length; q++) {
      long others = held.inside.get(q).stream().filter(i -> !types.contains(i.type())).count();
      int least = others == 0 ? 0 : held.loads[q];
      int most = Math.max(least, view.slotFree[q]);
      starts[q] = model.newIntVar(least, most, "");
      any[q] = model.newBoolVar("");
      model.addGreaterOrEqual(starts[q], any[q]);
      model.addLessOrEqual(starts[q], LinearExpr.term(any[q], most));
      LinearExprBuilder running = LinearExpr.newBuilder();
      for (int p = view.firstOverlapping(q); p <= q; p++) {
        running.add(starts[p]);
      }
      model.addLessOrEqual(running, view.slotFree[q]);
      fill(q, others);
    }
  }

  private void fill(int q, long others) {
    LinearExprBuilder content = LinearExpr.newBuilder().add(others);
    for (TypeFlow flow : flows) {
      LinearExprBuilder mine = flow.into(q);
      content.add(mine);
      model.addLessOrEqual(mine, LinearExpr.term(any[q], flow.mostInto(q)));
    }
    model.addLessOrEqual(content, LinearExpr.term(starts[q], view.day.loadCapacity()));
  }

  LinearExprBuilder shortages() {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    flows.forEach(f -> sum.add(f.shortages));
    return sum;
  }

  LinearExprBuilder loads() {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (IntVar s : starts) {
      sum.add(s);
    }
    return sum;
  }

  /** Unevenness of wear over all types; {@code least} bounds each, where it is known. */
  LinearExprBuilder wear(int... least) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (int i = 0; i < flows.size(); i++) {
      LinearExprBuilder one = Evenness.of(model, flows.get(i));
      sum.add(one);
      if (i < least.length) {
        model.addGreaterOrEqual(one, least[i]);
      }
    }
    return sum;
  }

  /** Instruments put into loads. */
  LinearExprBuilder contents() {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (TypeFlow flow : flows) {
      for (int q = 0; q < view.slots(); q++) {
        sum.add(flow.into(q));
      }
    }
    return sum;
  }

  /** Holds the first goals to what has been reached. */
  void hold(int shortages, int loads) {
    model.addLessOrEqual(shortages(), shortages);
    model.addLessOrEqual(loads(), loads);
  }

  /** Holds loads and filled needs of a plan: who fills them is open alone. */
  void holdAllButWho(Timetable t) {
    for (int q = 0; q < starts.length; q++) {
      model.addEquality(starts[q], t.loads[q]);
    }
    for (TypeFlow flow : flows) {
      for (int d = 0; d < flow.type.demands; d++) {
        model.addEquality(flow.shortage[d], t.unit[flow.k][d] == Timetable.SHORT ? 1 : 0);
      }
    }
  }

  /** Starts the search from this plan. */
  void hint(Timetable t) {
    model.clearHints();
    for (int q = 0; q < starts.length; q++) {
      model.addHint(starts[q], t.loads[q]);
      model.addHint(any[q], t.loads[q] > 0 ? 1 : 0);
    }
    flows.forEach(f -> f.hint(t));
  }

  /** Cuts a solution into the days of real instruments. */
  Timetable read(ToLongFunction<IntVar> value) {
    Timetable t = held.copy(view);
    for (int q = 0; q < starts.length; q++) {
      t.loads[q] = (int) value.applyAsLong(starts[q]);
    }
    flows.forEach(f -> f.read(value, t));
    t.trim(view);
    return t;
  }
}
