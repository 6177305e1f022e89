package kerfwright.practice.day;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;

/** The order in which a plan is written: by time of the appointment, then as on the day list. */
final class DayOrder {
  private final Map<String, Integer> place = new HashMap<>();
  private final Map<String, Integer> type = new HashMap<>();

  DayOrder(DayProblem problem) {
    problem.appointments().stream()
        .sorted(Comparator.comparingInt(Appointment::startMin))
        .forEach(a -> place.put(a.id(), place.size()));
    problem.stock().forEach(s -> type.put(s.type(), type.size()));
  }

  Comparator<TrayPlace> trays() {
    return Comparator.comparingInt((TrayPlace t) -> place.getOrDefault(t.appointment(), 0))
        .thenComparingInt(t -> type.getOrDefault(t.instrument().type(), 0));
  }

  Comparator<Shortage> shortages() {
    return Comparator.comparingInt((Shortage s) -> place.getOrDefault(s.appointment(), 0))
        .thenComparingInt(s -> type.getOrDefault(s.type(), 0));
  }
}
