package kerfwright.practice.day;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToLongFunction;

/** The whole day as flows of ready instruments: the model of the goals shortages and loads. */
final class ReadyModel {
  /** From this many needs on, chained balances give the better relaxation times. */
  private static final int CHAINED_FROM_DEMAND = 600;

  final CpModel model = new CpModel();
  private final DayView view;
  private final LoadRows rows;
  private final List<ReadyFlow> flows = new ArrayList<>();

  /**
   * @param fewest a bound of the shortages of each type
   */
  ReadyModel(DayView view, int[] fewest) {
    this.view = view;
    rows = new LoadRows(model, view);
    boolean chained = view.problem.demand() >= CHAINED_FROM_DEMAND;
    for (TypeView type : view.types) {
      ReadyFlow flow = new ReadyFlow(model, view, type, chained);
      LinearExprBuilder mine = LinearExpr.newBuilder();
      flow.shortage.forEach(mine::add);
      model.addGreaterOrEqual(mine, fewest[flows.size()]);
      flows.add(flow);
      for (int q = 0; q < view.slots(); q++) {
        rows.put(q, Arrays.asList(flow.p[q]), flow.mostInto(q));
      }
    }
    rows.close();
  }

  LinearExprBuilder shortages() {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    flows.forEach(f -> f.shortage.forEach(sum::add));
    return sum;
  }

  LinearExprBuilder loads() {
    return rows.count();
  }

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
      ReadyFlow flow = flows.get(k);
      new FlowReader(view, k, flow.ladder()).read(flow.served(value), flow.loaded(value), t);
    }
    t.trim(view);
    return t;
  }
}
