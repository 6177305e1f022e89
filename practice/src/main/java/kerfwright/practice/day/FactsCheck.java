package kerfwright.practice.day;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What fixed facts must keep to: they must be able to have happened. */
final class FactsCheck {
  private FactsCheck() {}

  static void check(
      FixedFacts facts,
      List<Stock> stock,
      List<Appointment> appointments,
      int cleaningMin,
      int loadMin,
      int sterilisers,
      int loadCapacity,
      List<DayFault> faults) {
    if (facts.nowMin() < 0) {
      faults.add(new DayFault("now", "is before the start", "a time from the start of the day on"));
    }
    Map<String, Stock> byType = new HashMap<>();
    stock.forEach(s -> byType.put(s.type(), s));
    for (int i = 0; i < facts.loads().size(); i++) {
      SteriliserLoad load = facts.loads().get(i);
      String at = "running_loads[" + i + "]";
      if (load.startMin() > facts.nowMin()) {
        faults.add(
            new DayFault(at + ".start", "has not started yet", "a load that runs or is done"));
      }
      if (load.instruments().size() > loadCapacity) {
        faults.add(
            new DayFault(
                at + ".instruments",
                "holds " + load.instruments().size(),
                "at most load_capacity " + loadCapacity));
      }
      long together =
          facts.loads().stream()
              .filter(
                  l -> l.startMin() <= load.startMin() && load.startMin() < l.startMin() + loadMin)
              .count();
      if (together > sterilisers) {
        faults.add(
            new DayFault(
                at + ".start",
                together + " loads run at once",
                "at most sterilisers " + sterilisers));
      }
      load.instruments().forEach(ref -> known(ref, byType, at + ".instruments", faults));
    }
    trays(facts, byType, appointments, faults);
    if (faults.isEmpty()) {
      for (Stock s : stock) {
        for (int u = 0; u < s.uses().size(); u++) {
          InstrumentHistory.follow(facts, s, u, appointments, cleaningMin, loadMin, faults);
        }
      }
    }
  }

  private static void trays(
      FixedFacts facts,
      Map<String, Stock> byType,
      List<Appointment> appointments,
      List<DayFault> faults) {
    Map<String, Appointment> byId = new HashMap<>();
    appointments.forEach(a -> byId.put(a.id(), a));
    Set<String> taken = new HashSet<>();
    for (int i = 0; i < facts.trays().size(); i++) {
      TrayPlace tray = facts.trays().get(i);
      String at = "on_trays[" + i + "]";
      known(tray.instrument(), byType, at, faults);
      Appointment a = byId.get(tray.appointment());
      if (a == null) {
        faults.add(
            new DayFault(
                at + ".appointment",
                "\"" + tray.appointment() + "\" is not on the day list",
                "the id of an appointment"));
      } else if (!a.needs().contains(tray.instrument().type())) {
        faults.add(
            new DayFault(
                at + ".type",
                "\"" + tray.instrument().type() + "\" is not among the needs of " + a.id(),
                "one of its needs"));
      } else if (!taken.add(a.id() + "\n" + tray.instrument().type())) {
        faults.add(new DayFault(at, "fills a need that is filled already", "each need once"));
      }
    }
  }

  private static void known(
      InstrumentRef ref, Map<String, Stock> byType, String at, List<DayFault> faults) {
    Stock s = byType.get(ref.type());
    if (s == null) {
      faults.add(
          new DayFault(
              at + ".type",
              "\"" + ref.type() + "\" is in no stock",
              StockCheck.listedType(ref.type(), byType.keySet())));
    } else if (ref.index() < 0 || ref.index() >= s.uses().size()) {
      faults.add(
          new DayFault(
              at + ".index",
              "is " + ref.index(),
              "0 to " + (s.uses().size() - 1) + " for " + ref.type()));
    }
  }
}
