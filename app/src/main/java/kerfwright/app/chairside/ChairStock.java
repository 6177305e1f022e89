package kerfwright.app.chairside;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockForPlanning;
import kerfwright.practice.drawer.StockItem;

/**
 * The instruments a run can go on with: the clean stock, the twins of the planned ones, and what
 * this run has already used and still has on the tray.
 */
final class ChairStock {
  private static final int MOST_TWINS = 2;

  private final List<DrawerInstrument> instruments;
  private final Map<String, StockItem> byLabel = new HashMap<>();

  private ChairStock(DrawerSnapshot clean, Drawer drawer) {
    this.instruments = new ArrayList<>(clean.instruments());
    drawer.in(InstrumentState.CLEAN).stream()
        .filter(StockItem::isRotary)
        .forEach(item -> byLabel.put(item.label(), item));
  }

  /** The stock as it stands, with the items of a run by their ids. */
  static ChairStock of(Drawer drawer, Set<UUID> ofThisRun) {
    ChairStock stock = new ChairStock(StockForPlanning.of(drawer), drawer);
    for (UUID id : ofThisRun) {
      drawer
          .find(id)
          .filter(StockItem::isRotary)
          .filter(ChairStock::onTheTray)
          .ifPresent(stock::add);
    }
    return stock;
  }

  /** Used in this run, or laid out for it: still at hand. */
  static boolean onTheTray(StockItem item) {
    return !item.removed() && (item.state().ready() || item.state() == InstrumentState.USED);
  }

  private void add(StockItem item) {
    byLabel.putIfAbsent(item.label(), item);
    if (instruments.stream().noneMatch(one -> one.id().equals(item.label()))) {
      instruments.add(clean(item));
    }
  }

  /** Makes sure that this one is looked at itself, not only one like it. */
  ChairStock with(String label) {
    StockItem item = byLabel.get(label);
    if (item != null) {
      add(item);
    }
    return this;
  }

  /** Adds pieces that are just like these, so that one can stand in for another. */
  ChairStock withTwinsOf(Set<String> labels) {
    Set<StockItem> twins = new HashSet<>();
    for (String label : labels) {
      StockItem planned = byLabel.get(label);
      if (planned != null) {
        byLabel.values().stream()
            .filter(one -> one.properties().equals(planned.properties()))
            .filter(one -> !labels.contains(one.label()))
            .sorted(java.util.Comparator.comparing(StockItem::label))
            .limit(MOST_TWINS)
            .forEach(twins::add);
      }
    }
    twins.stream().sorted(java.util.Comparator.comparing(StockItem::label)).forEach(this::add);
    return this;
  }

  /** As it was when the run began: what this run used counts one use more by now. */
  private static DrawerInstrument clean(StockItem item) {
    int ofThisRun = item.state() == InstrumentState.USED ? 1 : 0;
    return new DrawerInstrument(
        item.label(),
        item.properties(),
        Math.max(0, item.uses() - ofThisRun),
        item.sterilisations(),
        DrawerInstrument.State.CLEAN);
  }

  DrawerSnapshot snapshot() {
    return new DrawerSnapshot(instruments);
  }

  Optional<StockItem> item(String label) {
    return Optional.ofNullable(byLabel.get(label));
  }
}
