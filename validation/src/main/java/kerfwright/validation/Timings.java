package kerfwright.validation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Seconds of each contestant over the rounds; not-a-number stands for absent. */
final class Timings {
  private final Map<String, List<Double>> seconds = new LinkedHashMap<>();

  void add(String who, double value) {
    seconds.computeIfAbsent(who, key -> new ArrayList<>()).add(value);
  }

  double median(String who) {
    List<Double> all = new ArrayList<>(seconds.getOrDefault(who, List.of()));
    all.removeIf(value -> value.isNaN());
    Collections.sort(all);
    return all.isEmpty() ? Double.NaN : all.get(all.size() / 2);
  }

  /** Medians, and how many times as long as ours each took (median of the ratios per round). */
  Map<String, Object> summary() {
    Map<String, Object> result = new LinkedHashMap<>();
    List<Double> ours = seconds.getOrDefault("ours", List.of());
    for (Map.Entry<String, List<Double>> entry : seconds.entrySet()) {
      double median = median(entry.getKey());
      result.put(entry.getKey() + "S", Double.isNaN(median) ? "absent" : median);
      if (!entry.getKey().equals("ours") && !Double.isNaN(median)) {
        Timings ratios = new Timings();
        for (int i = 0; i < ours.size(); i++) {
          ratios.add("ratio", entry.getValue().get(i) / ours.get(i));
        }
        result.put(entry.getKey() + "OverOurs", ratios.median("ratio"));
      }
    }
    return result;
  }
}
