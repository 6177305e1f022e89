package kerfwright.app.record;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.UUID;
import kerfwright.practice.record.CutRecord;
import kerfwright.practice.record.CutUse;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.record.RecordQuery;
import org.jspecify.annotations.Nullable;

/**
 * A page of entries.
 *
 * @param entries last written first
 * @param corrections by id of the corrected entry: the correction
 * @param older number of the last, after which the next page begins; null where this is the last
 */
public record Found(
    List<RecordEntry> entries, Map<UUID, RecordEntry> corrections, @Nullable Long older) {

  static Found of(CutRecord record, RecordQuery query) {
    List<RecordEntry> entries = record.list(query);
    Map<UUID, RecordEntry> corrections =
        record.correctionsOf(entries.stream().map(RecordEntry::id).toList());
    boolean full = entries.size() == query.size();
    return new Found(entries, corrections, full ? entries.get(entries.size() - 1).number() : null);
  }

  public boolean corrected(RecordEntry entry) {
    return corrections.containsKey(entry.id());
  }

  private List<RecordEntry> holding() {
    return entries.stream().filter(one -> !corrected(one) && !one.strikes()).toList();
  }

  /** Instruments and handpieces on this page, by id, with their labels. */
  public Map<UUID, String> instruments() {
    Map<UUID, String> all = new LinkedHashMap<>();
    holding()
        .forEach(
            one -> one.use().pieces().forEach(of -> all.put(of.used().id(), of.used().label())));
    return all;
  }

  /** Loads on this page, by id, with their names. */
  public Map<UUID, String> loads() {
    Map<UUID, String> all = new LinkedHashMap<>();
    for (RecordEntry one : holding()) {
      for (CutUse.Piece piece : one.use().pieces()) {
        UUID load = piece.origin().load();
        if (load != null) {
          all.put(load, piece.origin().loadName());
        }
      }
    }
    return all;
  }

  /** Cases on this page. */
  public Collection<String> cases() {
    List<String> all = new ArrayList<>();
    holding().forEach(one -> all.add(one.use().caseReference()));
    return new TreeSet<>(all);
  }
}
