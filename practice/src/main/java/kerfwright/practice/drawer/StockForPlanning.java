package kerfwright.practice.drawer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.DrawerSnapshot;

/**
 * The clean stock as the planner sees it. Of pieces alike in kind and wear the first stands for
 * all, so that a large drawer is planned with as quickly as a small one.
 */
public final class StockForPlanning {
  private record Alike(InstrumentProperties properties, int uses, int sterilisations) {}

  private StockForPlanning() {}

  public static DrawerSnapshot of(Drawer drawer) {
    Set<Alike> seen = new HashSet<>();
    List<DrawerInstrument> instruments = new ArrayList<>();
    for (StockItem item : drawer.in(InstrumentState.CLEAN)) {
      if (item.isRotary()
          && seen.add(new Alike(item.properties(), item.uses(), item.sterilisations()))) {
        instruments.add(
            new DrawerInstrument(
                item.label(),
                item.properties(),
                item.uses(),
                item.sterilisations(),
                DrawerInstrument.State.CLEAN));
      }
    }
    return new DrawerSnapshot(instruments);
  }
}
