package kerfwright.practice.day;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;

/** The flows of all types and the loads they share: one model of a whole day. */
final class DayFlows<F extends TypeFlow> {
  final LoadRows rows;
  final List<F> flows = new ArrayList<>();
  private final CpModel model;
  private final DayView view;

  DayFlows(CpModel model, DayView view) {
    this.model = model;
    this.view = view;
    rows = new LoadRows(model, view);
  }

  /** Starts the search from this plan. */
  void hint(Timetable t) {
    FlowHint hint = new FlowHint();
    rows.hint(t, hint);
    for (int k = 0; k < flows.size(); k++) {
      flows.get(k).hint(t, k, hint);
    }
    hint.giveTo(model);
  }

  /** Cuts a solution into the days of real instruments. */
  Timetable read(ToLongFunction<IntVar> value) {
    Timetable t = new Timetable(view);
    for (int q = 0; q < t.loads.length; q++) {
      t.loads[q] = (int) value.applyAsLong(rows.starts[q]);
    }
    for (int k = 0; k < flows.size(); k++) {
      F flow = flows.get(k);
      new FlowReader(view, k, flow.ladder()).read(flow.served(value), flow.loaded(value), t);
    }
    t.trim(view);
    return t;
  }
}
