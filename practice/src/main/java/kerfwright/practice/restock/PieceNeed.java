package kerfwright.practice.restock;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Pieces to be bought without a model that says how long they last: of a kind that is no rotary
 * instrument as many as left the drawer and were not replaced, or as a planned day lacks where that
 * is more; of a type nothing here is like as many as a planned day lacks.
 *
 * @param type id of the kind, or the type of instrument a day lacks
 * @param gone what the pieces that left within the weeks looked at are called, the first few
 * @param left how many left
 * @param added how many came in place of them
 * @param here pieces that may still be used
 * @param order pieces to buy
 * @param price the last price written down, null where none is
 * @param requests what planned days lack of it
 */
public record PieceNeed(
    String type,
    List<String> gone,
    int left,
    int added,
    int here,
    int order,
    @Nullable BigDecimal price,
    List<PurchaseRequest> requests) {
  public PieceNeed {
    gone = List.copyOf(gone);
    requests = List.copyOf(requests);
  }

  /** What a day lacks and nothing here is like. */
  static PieceNeed unplaced(PurchaseRequest wish) {
    return new PieceNeed(wish.type(), List.of(), 0, 0, 0, wish.pieces(), null, List.of(wish));
  }

  public @Nullable BigDecimal cost() {
    return price == null ? null : price.multiply(BigDecimal.valueOf(order));
  }
}
