package kerfwright.catalogue.stack;

import java.util.List;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.material.Trait;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * A layer as it usually is.
 *
 * @param materialId what it is made of
 * @param thickness how thick, or null where no figure stands: the user is asked
 * @param arithmetic how the thickness follows from the rows it is taken from, may be empty
 * @param takenFrom ids of rows of the anatomy and restoration tables
 * @param sources where it comes from
 * @param basis how sure it is
 * @param note remark; where there is no thickness it says why
 */
public record UsualLayer(
    String materialId,
    @Nullable Range<Length> thickness,
    String arithmetic,
    List<String> takenFrom,
    List<SourceKey> sources,
    Basis basis,
    String note) {
  public boolean missing() {
    return thickness == null;
  }

  boolean has(Trait trait) {
    return Materials.packaged().get(materialId).has(trait);
  }

  /** The same with another thickness. */
  UsualLayer with(Range<Length> other, String how) {
    return new UsualLayer(materialId, other, how, takenFrom, sources, basis, note);
  }
}
