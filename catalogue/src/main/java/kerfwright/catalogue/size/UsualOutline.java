package kerfwright.catalogue.size;

import java.util.List;
import kerfwright.catalogue.Provenance;
import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * The opening or surface usually worked on.
 *
 * @param scopes procedures or variants it is for
 * @param teeth teeth it is for, empty for all
 * @param leastAge youngest patient in years, or null
 * @param mostAge oldest patient in years, or null
 * @param shape id of the outline's shape
 * @param length longer side
 * @param width shorter side
 * @param provenance sources and standing
 */
public record UsualOutline(
    List<String> scopes,
    List<String> teeth,
    @Nullable Integer leastAge,
    @Nullable Integer mostAge,
    String shape,
    Length length,
    Length width,
    Provenance provenance) {
  /** Whether it is for patients of that age; where none is told, for those of middle age. */
  boolean fits(@Nullable Integer ageYears) {
    int age = ageYears == null ? 45 : ageYears;
    return (leastAge == null || age >= leastAge) && (mostAge == null || age <= mostAge);
  }
}
