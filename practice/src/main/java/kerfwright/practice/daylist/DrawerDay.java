package kerfwright.practice.daylist;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.Need;
import kerfwright.schedule.Stock;
import kerfwright.schedule.Substitute;

/**
 * A day list put to the drawer: every piece of every type its trays may need, clean or still to be
 * reprocessed. Pieces in quarantine or withdrawn do not count. A needed type of which there is no
 * piece has an empty stock, so that it shows as short.
 *
 * @param problem the day to plan
 * @param pieces labels of the pieces of each type, in the order of their indexes
 */
public record DrawerDay(Day problem, Map<String, List<String>> pieces) {
  private static final List<InstrumentState> COUNTED =
      List.of(
          InstrumentState.CLEAN,
          InstrumentState.ON_TRAY,
          InstrumentState.USED,
          InstrumentState.CLEANING,
          InstrumentState.IN_LOAD);

  private static final class Pieces {
    private int life = 1;
    private final List<Integer> uses = new ArrayList<>();
    private final Set<Integer> dirty = new TreeSet<>();
    private final List<String> labels = new ArrayList<>();
  }

  /**
   * Puts a day list to the drawer as it is now.
   *
   * @throws kerfwright.schedule.InvalidDayException with every fault of the list
   */
  public static DrawerDay of(List<Booking> bookings, Drawer drawer, DaySetting setting) {
    Map<String, Pieces> stock = stock(wanted(bookings), drawer, setting);
    List<Stock> all = new ArrayList<>();
    Map<String, List<String>> labels = new HashMap<>();
    stock.forEach(
        (type, p) -> {
          all.add(new Stock(type, p.life, p.uses, p.dirty));
          labels.put(type, List.copyOf(p.labels));
        });
    Day problem =
        new Day(
            setting.opens(),
            setting.lengthMin(),
            setting.reprocessing().minutesBeforeLoad(),
            setting.reprocessing().loadMinutes(),
            setting.gridMin(),
            setting.sterilisers().sterilisers(),
            setting.sterilisers().pouches(),
            all,
            appointments(bookings, setting),
            FixedFacts.NONE);
    return new DrawerDay(problem, labels);
  }

  /** The day list as appointments in minutes from opening. */
  public static List<Appointment> appointments(List<Booking> bookings, DaySetting setting) {
    return bookings.stream()
        .map(
            b ->
                Appointment.of(
                    b.id(),
                    setting.minute(b.start()),
                    setting.minute(b.end()),
                    b.chair(),
                    b.needs()))
        .toList();
  }

  private static Set<String> wanted(List<Booking> bookings) {
    Set<String> types = new LinkedHashSet<>();
    for (Booking b : bookings) {
      for (Need need : b.needs()) {
        types.add(need.type());
        need.substitutes().stream().map(Substitute::type).forEach(types::add);
      }
    }
    return types;
  }

  private static Map<String, Pieces> stock(Set<String> wanted, Drawer drawer, DaySetting setting) {
    Map<String, Pieces> stock = new TreeMap<>();
    wanted.forEach(type -> stock.put(type, new Pieces()));
    for (InstrumentState state : COUNTED) {
      for (StockItem item : drawer.in(state)) {
        Pieces pieces = item.isRotary() ? stock.get(TypeName.of(item.properties())) : null;
        if (pieces == null) {
          continue;
        }
        int life = setting.lifeUses(item.properties().kind(), item.singleUse());
        pieces.life = Math.max(pieces.life, life);
        for (int n = 1; n <= item.pieces(); n++) {
          boolean clean = state == InstrumentState.CLEAN || state == InstrumentState.ON_TRAY;
          if (!clean) {
            pieces.dirty.add(pieces.uses.size());
          }
          // a worn one and a single-use one keep only what is left of their own life
          pieces.uses.add(Math.min(life, item.uses()) - life);
          pieces.labels.add(item.lot() ? item.label() + " (" + n + ")" : item.label());
        }
      }
    }
    stock.values().forEach(p -> p.uses.replaceAll(below -> p.life + below));
    return stock;
  }
}
