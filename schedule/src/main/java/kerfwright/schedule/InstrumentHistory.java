package kerfwright.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where one instrument stands once all fixed facts have happened. Either it is clean from a minute
 * on, or it is dirty and may go into a load from a minute on.
 *
 * @param uses uses by then, those of the fixed trays included
 * @param clean whether it is clean
 * @param fromMin clean from, or ready for a load from
 */
public record InstrumentHistory(int uses, boolean clean, int fromMin) {

  private record Event(int atMin, boolean load, int endMin, String name) {}

  /** Where an instrument of a valid day stands. */
  public static InstrumentHistory of(Day day, Stock stock, int index) {
    return follow(day, stock, index, new ArrayList<>());
  }

  /** Follows one instrument through the facts; a contradiction is reported and stepped over. */
  static InstrumentHistory follow(Day day, Stock stock, int index, List<DayFault> faults) {
    InstrumentRef self = new InstrumentRef(stock.type(), index);
    List<Event> events = new ArrayList<>();
    for (SteriliserLoad load : day.facts().loads()) {
      if (load.instruments().contains(self)) {
        events.add(new Event(load.startMin(), true, load.startMin() + day.loadMin(), ""));
      }
    }
    for (TrayPlace tray : day.facts().trays()) {
      if (tray.instrument().equals(self)) {
        day.appointment(tray.appointment())
            .ifPresent(a -> events.add(new Event(a.startMin(), false, a.endMin(), a.id())));
      }
    }
    events.sort(Comparator.comparingInt(Event::atMin));
    boolean clean = !stock.dirty().contains(index);
    int uses = stock.uses().get(index);
    int from = Integer.MIN_VALUE;
    for (Event e : events) {
      if (e.atMin() < from) {
        faults.add(conflict(self, e, e.load() ? "load-too-early" : "tray-too-early"));
      }
      if (!e.load() && !clean) {
        faults.add(conflict(self, e, "dirty"));
      }
      uses += e.load() ? 0 : 1;
      clean = e.load();
      from = e.load() ? e.endMin() : e.endMin() + day.cleaningMin();
    }
    if (uses > stock.life()) {
      faults.add(new DayFault("on_trays", "worn", self.type(), index, uses, stock.life()));
    }
    return new InstrumentHistory(uses, clean, Math.max(0, from));
  }

  private static DayFault conflict(InstrumentRef self, Event e, String code) {
    return new DayFault(
        e.load() ? "running_loads" : "on_trays", code, self.type(), self.index(), e.name());
  }
}
