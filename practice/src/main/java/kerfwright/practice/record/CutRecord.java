package kerfwright.practice.record;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import kerfwright.practice.drawer.DrawerConflict;
import kerfwright.practice.drawer.DrawerEntry;

/** Where the record is kept: one chain, only ever added to. */
public interface CutRecord {
  /** Someone else corrected the same entry; nothing was written. */
  final class CorrectedMeanwhile extends Exception {
    private static final long serialVersionUID = 1L;
  }

  /**
   * Writes this statement at the end of the chain, and the lines of the drawer with it, or nothing.
   * Where its id stands there already, nothing is written, the drawer stays as it is, and the entry
   * is given back as it stands. Returns only when all is safe from the end of the process.
   *
   * @throws CorrectedMeanwhile when what it corrects is corrected by another entry
   * @throws DrawerConflict when an item was changed meanwhile
   */
  RecordEntry append(Statement statement, Instant at, List<DrawerEntry> moves)
      throws CorrectedMeanwhile, DrawerConflict;

  Optional<RecordEntry> find(UUID id);

  Optional<RecordEntry> at(long number);

  /** Newest cut first. */
  List<RecordEntry> list(RecordQuery query);

  /** By the corrected entry: the one that corrects it. */
  Map<UUID, RecordEntry> correctionsOf(Collection<UUID> entries);

  /** Those of them that still say what was done: none corrects them, and they strike no other. */
  default List<RecordEntry> holding(List<RecordEntry> entries) {
    Set<UUID> corrected = correctionsOf(entries.stream().map(RecordEntry::id).toList()).keySet();
    return entries.stream().filter(one -> !one.strikes() && !corrected.contains(one.id())).toList();
  }

  /** The end of the chain as it is noted beside it. */
  Chain end();

  /** Every entry as it is stored, in the order of the chain, until one is answered by false. */
  void walk(Predicate<Stored> each);

  /**
   * An entry as it lies in the storage, unchecked.
   *
   * @param number its place
   * @param text its text
   * @param hash its hash
   * @param found true where it is found by the same case, tooth, instrument, load and time that its
   *     text says
   */
  record Stored(long number, String text, String hash, boolean found) {}
}
