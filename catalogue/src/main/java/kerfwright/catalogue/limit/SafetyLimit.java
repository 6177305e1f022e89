package kerfwright.catalogue.limit;

import java.util.List;
import kerfwright.catalogue.table.Numbers;
import kerfwright.quantity.SourceKey;

/**
 * A figure that decides what is allowed. Only figures read in their source stand here.
 *
 * @param id id, e.g. pulp-rise
 * @param quantity what it limits
 * @param numbers the figure and its spread, as far as told
 * @param unit unit of the numbers
 * @param conditions where it was found
 * @param sources where it comes from
 * @param locator table, page or how it was read
 * @param note remark, may be empty
 */
public record SafetyLimit(
    String id,
    String quantity,
    Numbers numbers,
    String unit,
    String conditions,
    List<SourceKey> sources,
    String locator,
    String note) {}
