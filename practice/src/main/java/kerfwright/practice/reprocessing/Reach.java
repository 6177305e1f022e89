package kerfwright.practice.reprocessing;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.record.CutRecord;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.record.RecordQuery;

/** How far a load reaches: its contents, what was split off them, and the cases. */
public final class Reach {
  private static final Set<InstrumentState> UNUSED =
      EnumSet.of(InstrumentState.IN_LOAD, InstrumentState.CLEAN, InstrumentState.ON_TRAY);
  private static final int PAGE = 500;

  private final Loads loads;
  private final Drawer drawer;
  private final CutRecord record;

  public Reach(Loads loads, Drawer drawer, CutRecord record) {
    this.loads = loads;
    this.drawer = drawer;
    this.record = record;
  }

  /** What lies in the steriliser yet. */
  List<StockItem> stillIn(Load load) {
    return itsOwn(load).stream().filter(o -> o.state() == InstrumentState.IN_LOAD).toList();
  }

  /** What was not used since, and what is held already. */
  List<StockItem> held(Load load) {
    return itsOwn(load).stream().filter(Reach::unusedOrHeld).toList();
  }

  private static boolean unusedOrHeld(StockItem item) {
    return UNUSED.contains(item.state()) || item.state() == InstrumentState.QUARANTINE;
  }

  /** Instruments this load was the last one of. */
  private List<StockItem> itsOwn(Load load) {
    Map<UUID, StockItem> all = all(load);
    Map<UUID, UUID> last = loads.lastLoads(all.keySet());
    return all.values().stream()
        .filter(item -> last.getOrDefault(item.id(), load.id()).equals(load.id()))
        .toList();
  }

  /** The contents, and pieces taken out of a lot among them since. */
  private Map<UUID, StockItem> all(Load load) {
    Map<UUID, StockItem> all = new LinkedHashMap<>();
    load.contents().forEach(one -> add(one.item(), load.started(), all));
    return all;
  }

  private void add(UUID id, Instant since, Map<UUID, StockItem> all) {
    StockItem item = drawer.find(id).orElseThrow();
    if (item.removed() || all.put(id, item) != null) {
      return;
    }
    for (DrawerEntry line : drawer.history(id)) {
      if (line.what() == DrawerEntry.What.SPLIT && !line.at().isBefore(since)) {
        for (DrawerEntry other : drawer.batch(line.batch())) {
          if (other.before() == null && !all.containsKey(other.after().id())) {
            add(other.after().id(), since, all);
          }
        }
      }
    }
  }

  Recall of(Load load) {
    List<StockItem> held = held(load);
    Set<UUID> ids = new java.util.HashSet<>();
    held.forEach(item -> ids.add(item.id()));
    List<StockItem> elsewhere =
        all(load).values().stream().filter(item -> !ids.contains(item.id())).toList();
    return new Recall(load, held, elsewhere, uses(load), suspect(load));
  }

  /** The load whose failed spore test puts this one in doubt, if there is one. */
  Optional<Load> doubtOf(Load load) {
    return loads.withFailedSpores(load.steriliser()).stream()
        .filter(failed -> suspect(failed).stream().anyMatch(one -> one.id().equals(load.id())))
        .findFirst();
  }

  private List<RecordEntry> uses(Load load) {
    List<RecordEntry> uses = new ArrayList<>();
    RecordQuery query = RecordQuery.ofLoad(load.id(), PAGE);
    List<RecordEntry> page = record.list(query);
    while (!page.isEmpty()) {
      uses.addAll(page);
      query = query.after(page.get(page.size() - 1));
      page = page.size() < PAGE ? List.of() : record.list(query);
    }
    return record.holding(uses);
  }

  /** After a failed spore test every load since the last passed one is in doubt. */
  private List<Load> suspect(Load load) {
    if (load.readings().get(Indicator.SPORES) != Indicator.Result.FAILED) {
      return List.of();
    }
    List<Load> suspect = new ArrayList<>();
    for (Load one :
        loads.of(load.steriliser(), Instant.EPOCH, Instant.parse("9999-01-01T00:00:00Z"))) {
      boolean before = one.started().isBefore(load.started());
      boolean passed = one.readings().get(Indicator.SPORES) == Indicator.Result.PASSED;
      if (passed && before) {
        break;
      }
      if (passed) {
        // what ran after a passed test is in no doubt
        suspect.clear();
      }
      if (!passed && !one.id().equals(load.id())) {
        suspect.add(one);
      }
    }
    return suspect;
  }
}
