package kerfwright.practice.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where one instrument stands once all fixed facts have happened. Either it is clean from a minute
 * on, or it is dirty and may go into a load from a minute on.
 *
 * @param uses uses by then, those of the fixed trays included
 * @param clean whether it is clean
 * @param fromMin clean from, or ready for a load from
 */
record InstrumentHistory(int uses, boolean clean, int fromMin) {

  private record Event(int atMin, boolean load, int endMin, String name) {}

  /** Follows one instrument through the facts; a contradiction is reported and stepped over. */
  static InstrumentHistory follow(
      FixedFacts facts,
      Stock stock,
      int index,
      List<Appointment> appointments,
      int cleaningMin,
      int loadMin,
      List<DayFault> faults) {
    InstrumentRef self = new InstrumentRef(stock.type(), index);
    List<Event> events = new ArrayList<>();
    for (SteriliserLoad load : facts.loads()) {
      if (load.instruments().contains(self)) {
        events.add(new Event(load.startMin(), true, load.startMin() + loadMin, "a load"));
      }
    }
    for (TrayPlace tray : facts.trays()) {
      if (tray.instrument().equals(self)) {
        Optional<Appointment> a =
            appointments.stream().filter(x -> x.id().equals(tray.appointment())).findFirst();
        a.ifPresent(x -> events.add(new Event(x.startMin(), false, x.endMin(), x.id())));
      }
    }
    events.sort(Comparator.comparingInt(Event::atMin));
    boolean clean = !stock.dirty().contains(index);
    int uses = stock.uses().get(index);
    int from = Integer.MIN_VALUE;
    for (Event e : events) {
      if (e.atMin() < from) {
        faults.add(conflict(self, e, "is not ready for it yet"));
      }
      if (e.load()) {
        clean = true;
        from = e.endMin();
        continue;
      }
      if (!clean) {
        faults.add(conflict(self, e, "is dirty by then"));
      }
      uses++;
      clean = false;
      from = e.endMin() + cleaningMin;
    }
    if (uses > stock.life()) {
      faults.add(
          new DayFault(
              "on_trays",
              self.type() + " " + index + " would have " + uses + " uses",
              "at most its life of " + stock.life()));
    }
    return new InstrumentHistory(uses, clean, Math.max(0, from));
  }

  private static DayFault conflict(InstrumentRef self, Event e, String what) {
    return new DayFault(
        e.load() ? "running_loads" : "on_trays",
        self.type() + " " + self.index() + " is put to " + e.name() + " but " + what,
        "facts that can have happened one after the other");
  }
}
