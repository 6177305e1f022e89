package kerfwright.practice.day;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.List;

/** The whole day with exact wear: the model of the last goal, the first two held. */
final class WearModel {
  final CpModel model = new CpModel();
  final DayFlows<WearFlow> day;

  WearModel(DayView view, int shortages, int loads, int[] leastPerType) {
    day = new DayFlows<>(model, view);
    LinearExprBuilder all = LinearExpr.newBuilder();
    for (int k = 0; k < view.types.size(); k++) {
      WearFlow flow = new WearFlow(model, view, view.types.get(k));
      day.flows.add(flow);
      for (int q = 0; q < view.slots(); q++) {
        day.rows.put(q, List.copyOf(flow.p.get(q).values()), flow.mostInto(q));
      }
      flow.shortage.forEach(all::add);
      model.addGreaterOrEqual(flow.unevenness, leastPerType[k]);
    }
    day.rows.close();
    model.addLessOrEqual(all, shortages);
    model.addLessOrEqual(day.rows.count(), loads);
  }

  LinearExprBuilder wear() {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    day.flows.forEach(f -> sum.add(f.unevenness));
    return sum;
  }
}
