package kerfwright.practice.record;

import java.time.Instant;
import java.util.List;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import org.jspecify.annotations.Nullable;

/**
 * The time an item is on one round, from one release of a load to the next.
 *
 * @param from its start, null for the first one
 * @param until its end, null while it goes on
 */
record ItemCycle(@Nullable Instant from, @Nullable Instant until) {

  /** The round of that time. */
  static ItemCycle around(Instant at, List<DrawerEntry> history) {
    Instant from = null;
    Instant until = null;
    for (DrawerEntry line : history) {
      StockItem before = line.before();
      boolean released =
          before != null
              && before.state() == InstrumentState.IN_LOAD
              && line.after().state() == InstrumentState.CLEAN;
      if (released && !line.at().isAfter(at)) {
        from = line.at();
      } else if (released && until == null) {
        until = line.at();
      }
    }
    return new ItemCycle(from, until);
  }

  boolean holds(Instant time) {
    return (from == null || !time.isBefore(from)) && (until == null || time.isBefore(until));
  }

  boolean ended() {
    return until != null;
  }
}
