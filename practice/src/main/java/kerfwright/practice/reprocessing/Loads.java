package kerfwright.practice.reprocessing;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import kerfwright.practice.drawer.DrawerConflict;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.InstrumentState;

/** Where loads are kept. */
public interface Loads {
  Optional<Load> find(UUID id);

  /** By its name, letters large or small. */
  Optional<Load> named(String name);

  /** The load that pouch is in. */
  Optional<Load> holding(UUID pouch);

  /** Loads nobody has decided on, oldest first. */
  List<Load> running();

  /** Loads in any state, newest first. */
  List<Load> newest(int most);

  /** Loads of one steriliser started in that time, newest first. */
  List<Load> of(String steriliser, Instant from, Instant before);

  /** Loads of one steriliser whose spore test was ever read as failed, newest first. */
  List<Load> withFailedSpores(String steriliser);

  /** The newest load each of these items was put into, by item. */
  Map<UUID, UUID> lastLoads(Collection<UUID> items);

  /** Since when each item of one state is in it. */
  Map<UUID, Instant> since(InstrumentState state);

  /**
   * Writes the load and the lines of the drawer, or nothing. Returns only when all is safe from the
   * end of the process.
   *
   * @throws LoadConflict when it is no longer at the version before, or its name is taken
   * @throws DrawerConflict when an item was changed meanwhile
   */
  void write(Load load, List<DrawerEntry> moves) throws LoadConflict, DrawerConflict;
}
