package kerfwright.catalogue.number;

import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A bur by its US number.
 *
 * @param number the number, e.g. 330, 33 1/2, 170L
 * @param series the series it belongs to, e.g. "tapered fissure, cross-cut"
 * @param shapeName shape in words
 * @param family shape family
 * @param headDiameter largest head diameter
 * @param headLength head length, or null where not known
 * @param bladesLow fewest usual blades, or null where not known
 * @param bladesHigh most usual blades, or null where not known
 * @param crossCut whether the blades carry cross cuts
 * @param isoSize nearest nominal size, digits 13 to 15
 * @param isoShape digits 7 to 9, or null where not known
 * @param provenance where the row comes from
 */
public record UsSize(
    String number,
    String series,
    String shapeName,
    ShapeFamily family,
    Length headDiameter,
    @Nullable Length headLength,
    @Nullable Integer bladesLow,
    @Nullable Integer bladesHigh,
    boolean crossCut,
    String isoSize,
    @Nullable String isoShape,
    Provenance provenance) {
  /** True for the finishing series. */
  public boolean finishing() {
    return series.equals("finishing");
  }
}
