package kerfwright.catalogue.handpiece;

import java.util.List;
import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.Remark;

/**
 * A handpiece of the catalogue with the standing of its figures.
 *
 * @param handpiece the handpiece
 * @param figures its figures in words, each with unit and standing
 * @param provenance where they come from and how they were derived
 */
public record HandpieceEntry(Handpiece handpiece, List<Remark> figures, Provenance provenance) {
  public HandpieceEntry {
    figures = List.copyOf(figures);
  }
}
