package kerfwright.practice.day;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import java.util.HashMap;
import java.util.Map;

/** A full assignment of a model's variables, to start the search from. */
final class FlowHint {
  private final Map<Integer, Long> values = new HashMap<>();
  private final Map<Integer, IntVar> variables = new HashMap<>();

  void set(IntVar v, long value) {
    values.put(v.getIndex(), value);
    variables.put(v.getIndex(), v);
  }

  long of(IntVar v) {
    return values.getOrDefault(v.getIndex(), 0L);
  }

  void giveTo(CpModel model) {
    model.clearHints();
    variables.forEach((index, v) -> model.addHint(v, values.getOrDefault(index, 0L)));
  }
}
