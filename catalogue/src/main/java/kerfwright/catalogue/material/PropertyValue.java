package kerfwright.catalogue.material;

import java.util.List;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * One published or recalled value of one property; blanks stay blank.
 *
 * @param id id of the row
 * @param property name of the property, e.g. hardness
 * @param low low end, or null
 * @param typical typical value, or null
 * @param high high end, or null
 * @param unit unit of all three
 * @param conditions test conditions, may be empty
 * @param sources where it comes from
 * @param locator table, page or equation
 * @param basis how sure it is
 * @param preferred whether the models take this row
 * @param note remark, may be empty
 */
public record PropertyValue(
    String id,
    String property,
    @Nullable Double low,
    @Nullable Double typical,
    @Nullable Double high,
    String unit,
    String conditions,
    List<SourceKey> sources,
    String locator,
    Basis basis,
    boolean preferred,
    String note) {}
