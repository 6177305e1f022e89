package kerfwright.practice.daylist;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerfwright.catalogue.piece.PieceKind;
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

  /** A piece with no wear model outlasts any day. */
  private static final int ENDLESS = 1000;

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
    Map<InstrumentState, List<StockItem>> there = new EnumMap<>(InstrumentState.class);
    COUNTED.forEach(state -> there.put(state, drawer.in(state)));
    List<Appointment> appointments = appointments(bookings, there, setting);
    Map<String, Pieces> stock = stock(wanted(appointments), there, setting);
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
            appointments,
            FixedFacts.NONE);
    return new DrawerDay(problem, labels);
  }

  /** The day list as appointments in minutes from opening. */
  private static List<Appointment> appointments(
      List<Booking> bookings, Map<InstrumentState, List<StockItem>> there, DaySetting setting) {
    Set<String> ready =
        kinds(
            there.entrySet().stream()
                .filter(one -> one.getKey().ready())
                .flatMap(one -> one.getValue().stream()));
    Set<String> all = kinds(there.values().stream().flatMap(List::stream));
    return bookings.stream()
        .map(
            b ->
                Appointment.of(
                    b.id(),
                    setting.minute(b.start()),
                    setting.minute(b.end()),
                    b.chair(),
                    b.scheduled(ready, all)))
        .toList();
  }

  /** Kinds of pieces that are no rotary instruments, of which there is one. */
  private static Set<String> kinds(Stream<StockItem> items) {
    return items
        .flatMap(item -> item.pieceKind().stream())
        .map(PieceKind::id)
        .collect(Collectors.toSet());
  }

  private static Set<String> wanted(List<Appointment> appointments) {
    Set<String> types = new LinkedHashSet<>();
    for (Appointment one : appointments) {
      for (Need need : one.needs().stream().map(one::detail).toList()) {
        types.add(need.type());
        need.substitutes().stream().map(Substitute::type).forEach(types::add);
      }
    }
    return types;
  }

  private static Map<String, Pieces> stock(
      Set<String> wanted, Map<InstrumentState, List<StockItem>> there, DaySetting setting) {
    Map<String, Pieces> stock = new TreeMap<>();
    wanted.forEach(type -> stock.put(type, new Pieces()));
    for (InstrumentState state : COUNTED) {
      for (StockItem item : there.getOrDefault(state, List.of())) {
        Pieces pieces = stock.get(type(item));
        if (pieces == null) {
          continue;
        }
        int life = life(item, setting);
        pieces.life = Math.max(pieces.life, life);
        for (int n = 1; n <= item.pieces(); n++) {
          boolean clean = state == InstrumentState.CLEAN || state == InstrumentState.ON_TRAY;
          if (!clean) {
            pieces.dirty.add(pieces.uses.size());
          }
          // a worn one and a single-use one keep only what is left of their own life
          pieces.uses.add(Math.min(life, item.isRotary() ? item.uses() : 0) - life);
          pieces.labels.add(item.lot() ? item.label() + " (" + n + ")" : item.label());
        }
      }
    }
    stock.values().forEach(p -> p.uses.replaceAll(below -> p.life + below));
    return stock;
  }

  private static String type(StockItem item) {
    return item.isRotary() ? TypeName.of(item.properties()) : item.fields().kind();
  }

  private static int life(StockItem item, DaySetting setting) {
    return item.isRotary()
        ? setting.lifeUses(item.properties().kind(), item.singleUse())
        : item.singleUse() ? 1 : ENDLESS;
  }
}
