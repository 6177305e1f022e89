package kerfwright.schedule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a day must keep to before it can be planned; every fault is found, not the first alone. */
final class DayCheck {
  private final Day day;
  private final List<DayFault> faults = new ArrayList<>();
  private final Map<String, Stock> byType = new LinkedHashMap<>();
  private final Map<String, Integer> places = new HashMap<>();

  private DayCheck(Day day) {
    this.day = day;
    day.stock().forEach(s -> byType.putIfAbsent(s.type(), s));
  }

  /** Every fault of a day; facts are looked at only where the rest is sound. */
  static List<DayFault> faults(Day day) {
    DayCheck check = new DayCheck(day);
    check.numbers();
    check.stock();
    for (int i = 0; i < day.appointments().size(); i++) {
      check.appointment(i);
    }
    if (check.faults.isEmpty()) {
      check.facts();
    }
    if (check.faults.isEmpty()) {
      for (Stock s : day.stock()) {
        for (int u = 0; u < s.uses().size(); u++) {
          InstrumentHistory.follow(day, s, u, check.faults);
        }
      }
    }
    return check.faults;
  }

  private void fault(boolean wrong, String field, String code, Object... values) {
    if (wrong) {
      faults.add(new DayFault(field, code, values));
    }
  }

  private void numbers() {
    positive("length_min", day.lengthMin());
    fault(
        day.lengthMin() > Day.LONGEST_DAY_MIN,
        "length_min",
        "too-long",
        day.lengthMin(),
        Day.LONGEST_DAY_MIN);
    fault(day.cleaningMin() < 0, "cleaning_min", "negative", day.cleaningMin());
    positive("load_min", day.loadMin());
    positive("load_grid_min", day.loadGridMin());
    positive("sterilisers", day.sterilisers());
    positive("load_capacity", day.loadCapacity());
    for (int at : day.extraStartsMin()) {
      fault(
          at < 0 || at > day.lengthMin() - day.loadMin(), "extra_starts", "load-after-closing", at);
    }
  }

  private void positive(String field, int value) {
    fault(value <= 0, field, "not-above-zero", value);
  }

  private void stock() {
    Set<String> names = new HashSet<>();
    for (int i = 0; i < day.stock().size(); i++) {
      Stock s = day.stock().get(i);
      String at = "instruments[" + i + "]";
      fault(s.type().isBlank(), at + ".type", "no-type");
      fault(!names.add(s.type()), at + ".type", "type-twice", s.type());
      fault(s.life() <= 0, at + ".life", "no-life", s.life());
      for (int u = 0; u < s.uses().size(); u++) {
        int uses = s.uses().get(u);
        fault(
            uses < 0 || uses > s.life(),
            at + ".used[" + u + "]",
            "uses-beyond-life",
            uses,
            s.life());
      }
      for (int u : s.dirty()) {
        fault(u < 0 || u >= s.uses().size(), at + ".dirty", "no-such-piece", u, s.uses().size());
      }
    }
  }

  private void appointment(int i) {
    Appointment a = day.appointments().get(i);
    String at = "appointments[" + i + "]";
    fault(a.id().isBlank(), at + ".id", "no-reference");
    Integer same = places.putIfAbsent(a.id(), i);
    if (same != null) {
      fault(true, at + ".id", "id-twice", a.id(), same);
    }
    fault(a.startMin() < 0, at + ".start", "before-opening", -a.startMin());
    fault(a.endMin() <= a.startMin(), at + ".end", "ends-before-start");
    fault(
        a.endMin() > a.startMin() && a.endMin() > day.lengthMin(),
        at + ".end",
        "after-closing",
        a.endMin() - day.lengthMin(),
        day.lengthMin());
    needs(a, at);
    String chair = a.chair();
    for (Appointment b : day.appointments().subList(0, i)) {
      if (chair != null
          && chair.equals(b.chair())
          && a.startMin() < b.endMin()
          && b.startMin() < a.endMin()) {
        fault(true, at + ".start", "chair-taken", b.id(), chair);
      }
    }
  }

  private void needs(Appointment a, String at) {
    Set<String> seen = new HashSet<>();
    for (int n = 0; n < a.needs().size(); n++) {
      String type = a.needs().get(n);
      String field = at + ".needs[" + n + "]";
      if (known(type, field)) {
        fault(!seen.add(type), field, "type-twice", type);
      }
      List<Substitute> others = a.detail(type).substitutes();
      for (int i = 0; i < others.size(); i++) {
        String other = field + ".or[" + i + "].type";
        if (others.get(i).type().equals(type)) {
          fault(true, other, "same-type");
        } else {
          known(others.get(i).type(), other);
        }
      }
    }
  }

  private boolean known(String type, String field) {
    if (!byType.containsKey(type)) {
      faults.add(DayFault.unknownType(field, type, byType.keySet()));
      return false;
    }
    return true;
  }

  private void known(InstrumentRef ref, String at) {
    Stock s = byType.get(ref.type());
    if (s == null) {
      known(ref.type(), at + ".type");
    } else {
      fault(
          ref.index() < 0 || ref.index() >= s.uses().size(),
          at + ".index",
          "no-such-piece",
          ref.index(),
          s.uses().size());
    }
  }

  /** Facts must be able to have happened. */
  private void facts() {
    FixedFacts facts = day.facts();
    fault(facts.nowMin() < 0, "now", "before-opening", -facts.nowMin());
    for (int i = 0; i < facts.loads().size(); i++) {
      SteriliserLoad load = facts.loads().get(i);
      String at = "running_loads[" + i + "]";
      fault(load.startMin() > facts.nowMin(), at + ".start", "load-not-started");
      fault(
          load.instruments().size() > day.loadCapacity(),
          at + ".instruments",
          "load-too-full",
          load.instruments().size(),
          day.loadCapacity());
      long together = day.running(facts.loads(), load.startMin());
      fault(
          together > day.sterilisers(),
          at + ".start",
          "too-many-loads",
          (int) together,
          day.sterilisers());
      load.instruments().forEach(ref -> known(ref, at + ".instruments"));
    }
    Set<String> taken = new HashSet<>();
    for (int i = 0; i < facts.trays().size(); i++) {
      TrayPlace tray = facts.trays().get(i);
      String at = "on_trays[" + i + "]";
      known(tray.instrument(), at);
      Appointment a = day.appointment(tray.appointment()).orElse(null);
      if (a == null) {
        fault(true, at + ".appointment", "no-appointment", tray.appointment());
      } else if (!a.needs().contains(tray.instrument().type())) {
        fault(true, at + ".type", "not-needed", tray.instrument().type(), a.id());
      } else {
        fault(!taken.add(a.id() + "\n" + tray.instrument().type()), at, "need-filled");
      }
    }
  }
}
