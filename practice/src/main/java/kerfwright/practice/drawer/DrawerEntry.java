package kerfwright.practice.drawer;

import java.time.Instant;
import java.util.UUID;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/**
 * One line of the history of one item. Lines are only ever added; a correction is a new line.
 *
 * @param id time-ordered
 * @param batch what was changed in one go has one batch, and is undone in one go
 * @param at when
 * @param what kind of change
 * @param note words of whoever made the change, may be empty
 * @param before the item before, null where it was new
 * @param after the item after
 * @param undoes the batch taken back by this line, or null
 */
public record DrawerEntry(
    UUID id,
    UUID batch,
    Instant at,
    What what,
    String note,
    @Nullable StockItem before,
    StockItem after,
    @Nullable UUID undoes) {

  /** Kinds of change; those by record and loads are taken back there, not in the drawer. */
  public enum What implements Identified {
    ADDED,
    MOVED,
    EDITED,
    SPLIT,
    UNDONE,
    /** By the cut record. */
    RECORDED,
    /** Put into a steriliser load. */
    LOADED,
    /** By the release of its load. */
    RELEASED,
    /** By the failure of its load. */
    RECALLED
  }
}
