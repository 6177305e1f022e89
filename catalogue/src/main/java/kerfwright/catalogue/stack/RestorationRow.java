package kerfwright.catalogue.stack;

import java.util.List;
import kerfwright.catalogue.table.Numbers;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * One figure on restorations: layer thickness, reduction depth, outline, remnant index; blanks stay
 * blank.
 *
 * @param id id of the row
 * @param quantity what it is
 * @param site layer or site
 * @param restoration restoration or study
 * @param least least ever, or null
 * @param numbers low, typical and high of what is usual
 * @param most most ever, or null
 * @param unit unit, "none" for a definition
 * @param sources where it comes from
 * @param basis how sure it is
 * @param note remark, may be empty
 */
public record RestorationRow(
    String id,
    String quantity,
    String site,
    String restoration,
    @Nullable Double least,
    Numbers numbers,
    @Nullable Double most,
    String unit,
    List<SourceKey> sources,
    Basis basis,
    String note) {}
