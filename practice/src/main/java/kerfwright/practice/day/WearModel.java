package kerfwright.practice.day;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;

/** The whole day with exact wear: the model of the last goal, the first two held. */
final class WearModel {
  final CpModel model = new CpModel();
  private final DayView view;
  private final LoadRows rows;
  private final List<WearFlow> flows = new ArrayList<>();

  WearModel(DayView view, int shortages, int loads, int[] leastPerType) {
    this.view = view;
    rows = new LoadRows(model, view);
    LinearExprBuilder all = LinearExpr.newBuilder();
    for (int k = 0; k < view.types.size(); k++) {
      WearFlow flow = new WearFlow(model, view, view.types.get(k));
      flows.add(flow);
      for (int q = 0; q < view.slots(); q++) {
        rows.put(q, List.copyOf(flow.p.get(q).values()), flow.mostInto(q));
      }
      flow.shortage.forEach(all::add);
      model.addGreaterOrEqual(flow.unevenness, leastPerType[k]);
    }
    rows.close();
    model.addLessOrEqual(all, shortages);
    model.addLessOrEqual(rows.count(), loads);
  }

  LinearExprBuilder wear() {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    flows.forEach(f -> sum.add(f.unevenness));
    return sum;
  }

  void hint(Timetable t) {
    FlowHint hint = new FlowHint();
    rows.hint(t, hint);
    for (int k = 0; k < flows.size(); k++) {
      flows.get(k).hint(t, k, hint);
    }
    hint.giveTo(model);
  }

  Timetable read(ToLongFunction<IntVar> value) {
    Timetable t = new Timetable(view);
    for (int q = 0; q < t.loads.length; q++) {
      t.loads[q] = (int) value.applyAsLong(rows.starts[q]);
    }
    for (int k = 0; k < flows.size(); k++) {
      WearFlow flow = flows.get(k);
      new FlowReader(view, k, flow.ladder()).read(flow.served(value), flow.loaded(value), t);
    }
    t.trim(view);
    return t;
  }
}
