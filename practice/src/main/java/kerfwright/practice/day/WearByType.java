package kerfwright.practice.day;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;

/** Makes the wear of one type at a time more even, inside the loads that are there. */
final class WearByType {
  private final DayView view;
  private final Search search;

  WearByType(DayView view, Search search) {
    this.view = view;
    this.search = search;
  }

  /** Rearranges type k inside the given loads; true if it got more even. */
  boolean improve(Timetable t, int k, int least, double seconds) {
    TypeView type = view.types.get(k);
    int now = Timetable.wear(type, t.unit[k]);
    if (now <= least || type.demands == 0) {
      return false;
    }
    CpModel model = new CpModel();
    WearFlow flow = new WearFlow(model, view, type);
    LinearExprBuilder shortages = LinearExpr.newBuilder();
    flow.shortage.forEach(shortages::add);
    int short0 = 0;
    for (int u : t.unit[k]) {
      short0 += u == Timetable.SHORT ? 1 : 0;
    }
    model.addLessOrEqual(shortages, short0);
    for (int q = 0; q < view.slots(); q++) {
      long others = t.inside.get(q).stream().filter(ku -> ku[0] != k).count();
      LinearExprBuilder mine = LinearExpr.newBuilder();
      for (IntVar v : flow.p.get(q).values()) {
        mine.add(v);
      }
      model.addLessOrEqual(mine, (long) t.loads[q] * view.problem.loadCapacity() - others);
    }
    model.addLessOrEqual(flow.unevenness, now - 1);
    model.addGreaterOrEqual(flow.unevenness, least);
    model.minimize(flow.unevenness);
    boolean[] better = new boolean[1];
    search.run(
        model,
        Search.RELAXATION,
        seconds,
        value -> {
          for (int q = 0; q < view.slots(); q++) {
            t.inside.get(q).removeIf(ku -> ku[0] == k);
          }
          java.util.Arrays.fill(t.unit[k], Timetable.SHORT);
          new FlowReader(view, k, flow.ladder()).read(flow.served(value), flow.loaded(value), t);
          better[0] = true;
        },
        b -> {});
    return better[0];
  }
}
