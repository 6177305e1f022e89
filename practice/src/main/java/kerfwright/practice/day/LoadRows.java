package kerfwright.practice.day;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.List;

/**
 * The loads of a day: how many start at each slot, sterilisers, and capacity over all types.
 *
 * <p>{@code starts[q]} loads start at slot q; {@code any[q]} whether one does. Each type's content
 * is linked to {@code any} by itself, which makes the relaxation strong where capacity is ample.
 */
final class LoadRows {
  final IntVar[] starts;
  final BoolVar[] any;
  private final CpModel model;
  private final DayView view;
  private final LinearExprBuilder[] content;

  LoadRows(CpModel model, DayView view) {
    this.model = model;
    this.view = view;
    starts = new IntVar[view.slots()];
    any = new BoolVar[view.slots()];
    content = new LinearExprBuilder[view.slots()];
    for (int q = 0; q < starts.length; q++) {
      starts[q] = model.newIntVar(0, Math.max(0, view.slotFree[q]), "");
      any[q] = model.newBoolVar("");
      content[q] = LinearExpr.newBuilder();
      model.addGreaterOrEqual(starts[q], any[q]);
      model.addLessOrEqual(starts[q], LinearExpr.term(any[q], Math.max(0, view.slotFree[q])));
      LinearExprBuilder running = LinearExpr.newBuilder();
      for (int p = view.firstOverlapping(q); p <= q; p++) {
        running.add(starts[p]);
      }
      model.addLessOrEqual(running, view.slotFree[q]);
    }
  }

  /** Adds what one type puts into the load of a slot, at most {@code most}. */
  void put(int slot, List<IntVar> vars, int most) {
    if (vars.isEmpty()) {
      return;
    }
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (IntVar v : vars) {
      sum.add(v);
      content[slot].add(v);
    }
    model.addLessOrEqual(sum, LinearExpr.term(any[slot], most));
  }

  /** Call once all types have been put in. */
  void close() {
    for (int q = 0; q < starts.length; q++) {
      model.addLessOrEqual(content[q], LinearExpr.term(starts[q], view.problem.loadCapacity()));
    }
  }

  LinearExprBuilder count() {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (IntVar s : starts) {
      sum.add(s);
    }
    return sum;
  }

  void hint(Timetable t, FlowHint hint) {
    for (int q = 0; q < starts.length; q++) {
      hint.set(starts[q], t.loads[q]);
      hint.set(any[q], t.loads[q] > 0 ? 1 : 0);
    }
  }
}
