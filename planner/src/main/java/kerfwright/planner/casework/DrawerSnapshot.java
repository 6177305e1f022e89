package kerfwright.planner.casework;

import java.util.List;

/** The drawer at the moment of planning. */
public record DrawerSnapshot(List<DrawerInstrument> instruments) {
  public DrawerSnapshot {
    instruments = List.copyOf(instruments);
  }
}
