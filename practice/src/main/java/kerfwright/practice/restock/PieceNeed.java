package kerfwright.practice.restock;

import java.math.BigDecimal;
import java.util.List;
import kerfwright.catalogue.piece.PieceKind;
import org.jspecify.annotations.Nullable;

/**
 * Pieces of one kind that is no rotary instrument, to be bought: no model says how long they last,
 * so as many as left the drawer and were not replaced, or as a planned day lacks where that is
 * more.
 *
 * @param kind what
 * @param gone what the pieces that left within the weeks looked at are called, the first few
 * @param left how many left
 * @param added how many came in place of them
 * @param here pieces that may still be used
 * @param order pieces to buy
 * @param price the last price written down, null where none is
 * @param requests what planned days lack of it
 */
public record PieceNeed(
    PieceKind kind,
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

  public @Nullable BigDecimal cost() {
    return price == null ? null : price.multiply(BigDecimal.valueOf(order));
  }
}
