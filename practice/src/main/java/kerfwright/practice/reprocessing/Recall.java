package kerfwright.practice.reprocessing;

import java.util.List;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.record.CutUse;
import kerfwright.practice.record.RecordEntry;

/**
 * What a failed load reaches.
 *
 * @param load the load
 * @param held instruments it sent to quarantine, as they are now
 * @param elsewhere instruments that had moved on: used, being cleaned, withdrawn, in another load
 * @param uses entries of the record of instruments and handpieces used out of it, newest first
 * @param suspect loads of the same steriliser since the last passed spore test, newest first
 */
public record Recall(
    Load load,
    List<StockItem> held,
    List<StockItem> elsewhere,
    List<RecordEntry> uses,
    List<Load> suspect) {
  public Recall {
    held = List.copyOf(held);
    elsewhere = List.copyOf(elsewhere);
    uses = List.copyOf(uses);
    suspect = List.copyOf(suspect);
  }

  /** What came out of this load, of the pieces an entry tells of. */
  public List<CutUse.Piece> pieces(RecordEntry entry) {
    return entry.use().pieces().stream()
        .filter(one -> load.id().equals(one.origin().load()))
        .toList();
  }

  /** The cases it reaches. */
  public List<String> cases() {
    return uses.stream().map(entry -> entry.use().caseReference()).distinct().sorted().toList();
  }
}
