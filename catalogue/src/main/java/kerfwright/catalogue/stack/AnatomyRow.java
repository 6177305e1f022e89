package kerfwright.catalogue.stack;

import java.util.List;
import kerfwright.catalogue.table.Numbers;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * One measured or recalled dimension of teeth; blanks stay blank.
 *
 * @param id id of the row
 * @param tooth tooth or group of teeth as the source has it
 * @param arch maxillary, mandibular or both
 * @param quantity what was measured
 * @param landmark from where to where
 * @param numbers least, mean and greatest
 * @param sd standard deviation, or null
 * @param unit unit of the numbers
 * @param ageGroup ages, may be empty
 * @param count number of teeth or people, may be empty
 * @param method how it was measured
 * @param sources where it comes from
 * @param basis how sure it is
 * @param note remark, may be empty
 */
public record AnatomyRow(
    String id,
    String tooth,
    String arch,
    String quantity,
    String landmark,
    Numbers numbers,
    @Nullable Double sd,
    String unit,
    String ageGroup,
    String count,
    String method,
    List<SourceKey> sources,
    Basis basis,
    String note) {}
