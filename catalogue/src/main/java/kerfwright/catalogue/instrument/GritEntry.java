package kerfwright.catalogue.instrument;

import java.util.List;
import kerfwright.catalogue.Provenance;
import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What was read about a grit class.
 *
 * @param grit the class
 * @param rings ring colours; "none" where an instrument without ring is meant too
 * @param low low end of the particle size read, or null
 * @param high high end of the particle size read, or null
 * @param singleValues single values read, in words with their sources
 * @param usualUse usual use (common practice)
 * @param provenance where the row comes from
 */
public record GritEntry(
    GritClass grit,
    List<String> rings,
    @Nullable Length low,
    @Nullable Length high,
    String singleValues,
    String usualUse,
    Provenance provenance) {}
