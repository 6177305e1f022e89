package kerfwright.practice.day;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.Arrays;

/** The whole day as flows of ready instruments: the model of the goals shortages and loads. */
final class ReadyModel {
  /** From this many needs on, chained balances give the better relaxation times. */
  private static final int CHAINED_FROM_DEMAND = 600;

  final CpModel model = new CpModel();
  final DayFlows<ReadyFlow> day;

  /**
   * @param fewest a bound of the shortages of each type
   */
  ReadyModel(DayView view, int[] fewest) {
    day = new DayFlows<>(model, view);
    boolean chained = view.problem.demand() >= CHAINED_FROM_DEMAND;
    for (TypeView type : view.types) {
      ReadyFlow flow = new ReadyFlow(model, view, type, chained);
      LinearExprBuilder mine = LinearExpr.newBuilder();
      flow.shortage.forEach(mine::add);
      model.addGreaterOrEqual(mine, fewest[day.flows.size()]);
      day.flows.add(flow);
      for (int q = 0; q < view.slots(); q++) {
        day.rows.put(q, Arrays.asList(flow.p[q]), flow.mostInto(q));
      }
    }
    day.rows.close();
  }

  LinearExprBuilder shortages() {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    day.flows.forEach(f -> f.shortage.forEach(sum::add));
    return sum;
  }

  LinearExprBuilder loads() {
    return day.rows.count();
  }
}
