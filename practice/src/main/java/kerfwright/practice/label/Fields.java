package kerfwright.practice.label;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The fields of one element string while it is read; each is checked as it comes. */
final class Fields {
  /** Everything but the 82 characters of the standard (GS1 encodable character set 82). */
  private static final Pattern OUTSIDE = Pattern.compile("[^!\"%&'()*+,\\-./0-9:;<=>?A-Z_a-z]");

  private static final Pattern NO_DIGIT = Pattern.compile("[^0-9]");

  private final Map<Element, String> values = new EnumMap<>(Element.class);
  private final int yearNow;

  Fields(int yearNow) {
    this.yearNow = yearNow;
  }

  /** Takes a field that begins at this character, or says what is wrong with it. */
  Optional<ScanFault> put(Element element, String value, int at) {
    Optional<ScanFault> fault = fault(element, value, at);
    if (fault.isEmpty()) {
      values.put(element, value);
    }
    return fault;
  }

  private Optional<ScanFault> fault(Element element, String value, int at) {
    if (values.containsKey(element)) {
      return one(ScanFault.Kind.ELEMENT_TWICE, at, element, value, "");
    }
    if (value.isEmpty()) {
      return one(ScanFault.Kind.NO_VALUE, at, element, "", "");
    }
    if (element.fixed()) {
      Matcher other = NO_DIGIT.matcher(value);
      if (other.find()) {
        return one(ScanFault.Kind.NOT_DIGITS, at + other.start(), element, other.group(), "");
      }
      if (value.length() < element.length()) {
        String expected = Integer.toString(element.length());
        return one(ScanFault.Kind.TOO_SHORT, at, element, value, expected);
      }
      return element == Element.GTIN ? gtin(value, at) : date(element, value, at);
    }
    Matcher other = OUTSIDE.matcher(value);
    if (other.find()) {
      return one(ScanFault.Kind.CHARACTER, at + other.start(), element, other.group(), "");
    }
    return value.length() > element.length()
        ? one(ScanFault.Kind.TOO_LONG, at, element, value, Integer.toString(element.length()))
        : Optional.empty();
  }

  private static Optional<ScanFault> gtin(String value, int at) {
    char expected = CheckDigit.of(value.substring(0, 13));
    return value.charAt(13) == expected
        ? Optional.empty()
        : one(
            ScanFault.Kind.CHECK_DIGIT,
            at + 13,
            Element.GTIN,
            value.substring(13),
            Character.toString(expected));
  }

  private Optional<ScanFault> date(Element element, String value, int at) {
    if (!SixDigitDate.monthIsSound(value)) {
      return one(ScanFault.Kind.MONTH, at + 2, element, value.substring(2, 4), "01-12");
    }
    int last = SixDigitDate.lastDay(value, yearNow);
    return SixDigitDate.day(value) > last
        ? one(ScanFault.Kind.DAY, at + 4, element, value.substring(4), "00-" + last)
        : Optional.empty();
  }

  private static Optional<ScanFault> one(
      ScanFault.Kind kind, int at, Element element, String found, String expected) {
    return Optional.of(new ScanFault(kind, at, element.identifier(), found, expected));
  }

  boolean isEmpty() {
    return values.isEmpty();
  }

  MakersCode code() {
    return new MakersCode(
        values.get(Element.GTIN),
        values.get(Element.LOT),
        values.get(Element.SERIAL),
        day(Element.PRODUCED),
        day(Element.EXPIRES),
        values.get(Element.ADDITIONAL));
  }

  private @Nullable LocalDate day(Element element) {
    String value = values.get(element);
    return value == null ? null : SixDigitDate.read(value, yearNow);
  }
}
