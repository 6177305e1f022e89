package kerfwright.catalogue.reprocessing;

import java.util.List;
import kerfwright.catalogue.table.Numbers;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;

/**
 * One figure of reprocessing; the maker's instructions override every one of them.
 *
 * @param id id of the row
 * @param quantity what it is about, e.g. step-minutes
 * @param item the step, cycle or instrument
 * @param numbers low, typical and high, as far as told
 * @param unit unit of the numbers
 * @param conditions under which it holds
 * @param sources where it comes from
 * @param basis how sure it is
 * @param note remark, may be empty
 */
public record ReprocessingFigure(
    String id,
    String quantity,
    String item,
    Numbers numbers,
    String unit,
    String conditions,
    List<SourceKey> sources,
    Basis basis,
    String note) {}
