package kerfwright.catalogue.size;

import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.Provenance;
import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What must be left: stop at the least, warn below the typical.
 *
 * @param id id of the row
 * @param materials ids or {@code #traits} of what is left
 * @param scopes procedures or variants it is for, empty for all
 * @param teeth teeth it is for, empty for all
 * @param least stop here; empty where all of it stays
 * @param typical warn below this
 * @param provenance sources and standing
 */
public record LeastThickness(
    String id,
    List<String> materials,
    List<String> scopes,
    List<String> teeth,
    Optional<Length> least,
    @Nullable Length typical,
    Provenance provenance) {}
