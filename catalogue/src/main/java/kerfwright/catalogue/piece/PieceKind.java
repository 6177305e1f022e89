package kerfwright.catalogue.piece;

import kerfwright.quantity.Identified;

/**
 * A kind of piece that is no rotary instrument: it has neither geometry nor a wear model.
 *
 * @param id id used in files; of a handpiece that of the handpiece, of a tool that of the
 *     operations
 * @param sort what sort of piece it is
 * @param hollow true where it has an inner channel, which a cycle for solid loads does not reach
 * @param oiled true where it is oiled before it is packed
 */
public record PieceKind(String id, Sort sort, boolean hollow, boolean oiled) {
  /** Sorts of pieces. */
  public enum Sort implements Identified {
    HANDPIECE,
    HAND_INSTRUMENT,
    TIP,
    OTHER;
  }
}
