package kerfwright.practice.label;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
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
    @Nullable String additional) {
  private static final DateTimeFormatter SIX_DIGITS = DateTimeFormatter.ofPattern("yyMMdd");

  /** The element string of this, announced as GS1 DataMatrix, with separators written {GS}. */
  public String elementString() {
    StringBuilder text = new StringBuilder("]d2");
    add(text, Element.GTIN, gtin);
    add(text, Element.PRODUCED, produced == null ? null : SIX_DIGITS.format(produced));
    add(text, Element.EXPIRES, expires == null ? null : SIX_DIGITS.format(expires));
    add(text, Element.LOT, lot);
    add(text, Element.SERIAL, serial);
    add(text, Element.ADDITIONAL, additional);
    return text.toString();
  }

  private static void add(StringBuilder text, Element element, @Nullable String value) {
    if (value != null) {
      text.append(element.identifier()).append(value).append(element.fixed() ? "" : "{GS}");
    }
  }

  /** True where the last day of use lies before this day. */
  public boolean expiredOn(LocalDate day) {
    return expires != null && expires.isBefore(day);
  }
}
