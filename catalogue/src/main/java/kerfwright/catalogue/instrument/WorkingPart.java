package kerfwright.catalogue.instrument;

import java.util.List;
import kerfwright.catalogue.Provenance;
import org.jspecify.annotations.Nullable;

/**
 * Material of the working part as digits 1 to 3 of the ISO 6360 number name it.
 *
 * @param group three digits
 * @param material what the first two digits say, or null where they are unknown
 * @param third what the third digit says (coating of steel and carbide, bond of abrasives), or null
 * @param kinds kinds of instrument that may carry this group, the usual one first; empty if unknown
 * @param wholeGroupRead true where the three digits were met together in the catalogue
 * @param provenance standing of the reading
 */
public record WorkingPart(
    String group,
    @Nullable String material,
    @Nullable String third,
    List<InstrumentKind> kinds,
    boolean wholeGroupRead,
    Provenance provenance) {
  public WorkingPart {
    kinds = List.copyOf(kinds);
  }

  /** Both halves in words, an unknown half called unknown. */
  public String inWords() {
    String second = third == null ? "third digit " + group.charAt(2) + " unknown" : third;
    return (material == null ? "unknown material" : material) + "; " + second;
  }
}
