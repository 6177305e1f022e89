package kerfwright.practice.day;

import java.util.ArrayList;
import java.util.List;

/** Shortages of a valid plan found at once; for studies of many days. Not proven to be fewest. */
public final class QuickPlan {
  private static final int RUNS = 40;
  private static final int SEED = 1;

  private QuickPlan() {}

  public static List<Shortage> shortages(DayProblem day) {
    DayView view = new DayView(day);
    Timetable t = FirstPlan.of(view, SEED, RUNS);
    List<Shortage> all = new ArrayList<>();
    for (int k = 0; k < t.unit.length; k++) {
      TypeView type = view.types.get(k);
      for (int d = 0; d < type.demands; d++) {
        if (t.unit[k][d] == Timetable.SHORT) {
          all.add(
              new Shortage(day.appointments().get(type.appointment[d]).id(), type.stock.type()));
        }
      }
    }
    return all;
  }
}
