package kerfwright.practice.label;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What a maker's package says of itself; what it does not say is null.
 *
 * @param gtin trade item number, 14 digits, check digit sound
 * @param lot batch or lot
 * @param serial serial number
 * @param produced day of production
 * @param expires last day of use
 * @param additional the maker's additional item identification
 */
public record MakersCode(
    @Nullable String gtin,
    @Nullable String lot,
    @Nullable String serial,
    @Nullable LocalDate produced,
    @Nullable LocalDate expires,
    @Nullable String additional) {}
