package kerfwright.catalogue.size;

import java.util.List;
import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.operation.Formula;
import org.jspecify.annotations.Nullable;

/**
 * A usual size.
 *
 * @param name the name formulas use, e.g. S_o
 * @param scopes procedures or variants it is for, empty for all
 * @param teeth teeth it is for, empty for all
 * @param low low end, or null where not given
 * @param value what is taken: a number, or a formula of other sizes
 * @param high high end, or null where not given
 * @param unit mm, mm2, mm/s or none
 * @param provenance sources and standing
 */
public record Size(
    String name,
    List<String> scopes,
    List<String> teeth,
    @Nullable Double low,
    Formula value,
    @Nullable Double high,
    String unit,
    Provenance provenance) {}
