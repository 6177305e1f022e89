package kerfwright.practice.day;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the day list must keep to. */
final class AppointmentCheck {
  private AppointmentCheck() {}

  static void check(
      List<Appointment> appointments, List<Stock> stock, int lengthMin, List<DayFault> faults) {
    Set<String> types = new LinkedHashSet<>();
    stock.forEach(s -> types.add(s.type()));
    Map<String, Integer> ids = new HashMap<>();
    for (int i = 0; i < appointments.size(); i++) {
      Appointment a = appointments.get(i);
      String at = "appointments[" + i + "]";
      if (a.id().isBlank()) {
        faults.add(new DayFault(at + ".id", "is empty", "the practice's own reference"));
      } else if (ids.putIfAbsent(a.id(), i) != null) {
        faults.add(
            new DayFault(
                at + ".id",
                "\"" + a.id() + "\" is also appointments[" + ids.get(a.id()) + "]",
                "an id used once"));
      }
      times(a, at, lengthMin, faults);
      needs(a, at, types, faults);
      overlaps(appointments, i, at, faults);
    }
  }

  private static void times(Appointment a, String at, int lengthMin, List<DayFault> faults) {
    if (a.startMin() < 0) {
      faults.add(
          new DayFault(
              at + ".start",
              "is " + -a.startMin() + " min before the day starts",
              "a time from the start of the day on"));
    }
    if (a.endMin() <= a.startMin()) {
      faults.add(
          new DayFault(at + ".end", "is not after the start", "a time later than the start"));
    } else if (a.endMin() > lengthMin) {
      faults.add(
          new DayFault(
              at + ".end",
              "is " + (a.endMin() - lengthMin) + " min after closing",
              "a time within the day's length_min of " + lengthMin));
    }
  }

  private static void needs(Appointment a, String at, Set<String> types, List<DayFault> faults) {
    Set<String> seen = new HashSet<>();
    for (int n = 0; n < a.needs().size(); n++) {
      String type = a.needs().get(n);
      String field = at + ".needs[" + n + "]";
      if (!types.contains(type)) {
        faults.add(
            new DayFault(
                field, "\"" + type + "\" is in no stock", StockCheck.listedType(type, types)));
      } else if (!seen.add(type)) {
        faults.add(new DayFault(field, "\"" + type + "\" is listed twice", "each type once"));
      }
      substitutes(a.detail(type), field, types, faults);
    }
  }

  private static void substitutes(
      Need need, String field, Set<String> types, List<DayFault> faults) {
    for (int i = 0; i < need.substitutes().size(); i++) {
      String other = need.substitutes().get(i).type();
      String at = field + ".or[" + i + "].type";
      if (other.equals(need.type())) {
        faults.add(new DayFault(at, "is the type it stands for", "another type"));
      } else if (!types.contains(other)) {
        faults.add(
            new DayFault(
                at, "\"" + other + "\" is in no stock", StockCheck.listedType(other, types)));
      }
    }
  }

  private static void overlaps(List<Appointment> all, int i, String at, List<DayFault> faults) {
    Appointment a = all.get(i);
    if (a.chair() == null) {
      return;
    }
    for (int j = 0; j < i; j++) {
      Appointment b = all.get(j);
      if (a.chair().equals(b.chair()) && a.startMin() < b.endMin() && b.startMin() < a.endMin()) {
        faults.add(
            new DayFault(
                at + ".start",
                "overlaps appointment \"" + b.id() + "\" in chair \"" + a.chair() + "\"",
                "one appointment at a time in a chair"));
      }
    }
  }
}
