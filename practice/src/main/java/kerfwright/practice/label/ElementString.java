package kerfwright.practice.label;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads what a scanner makes of a maker's package: GS1 element strings with the elements of {@link
 * Element}, and plain trade item numbers of 13 or 14 digits.
 *
 * <p>Taken are the symbology identifiers ]d1, ]d2 and ]C1 in front; the separator as the character
 * 29, or as {GS} or the sign U+241D where a scanner is set to write it; and the form for people,
 * with identifiers in round brackets. A field of no set length runs to the separator or the end. A
 * text that carries neither symbology identifier nor separator may have lost its separators: where
 * it can then be read in another way too, all ways are told (GS1 General Specifications, element
 * strings and FNC1; ISO/IEC 15424 for the identifiers).
 */
public final class ElementString {
  /** Longest text taken. */
  public static final int LONGEST = 200;

  private static final char SEPARATOR = 29;
  private static final int MOST_WAYS = 9;
  private static final Pattern SYMBOLOGY = Pattern.compile("\\](..)");
  private static final Pattern BRACKET = Pattern.compile("\\((01|10|11|17|21|240)\\)");
  private static final Pattern LIKE_ONE =
      Pattern.compile("\\].*|\\(\\d{2,4}\\).*|01\\d{14}.*|.*[\\x1d\u241d].*|.*\\{GS\\}.*");

  private final int yearNow;

  private ElementString(int yearNow) {
    this.yearNow = yearNow;
  }

  /** True where a text has the look of a maker's code, well-formed or not. */
  public static boolean looksLikeOne(String text) {
    return LIKE_ONE.matcher(text).matches() || text.matches("\\d{13,14}") && CheckDigit.holds(text);
  }

  /** Reads a scanned text; the present year settles the century of its dates. */
  public static Reading read(String scanned, int yearNow) {
    String text = scanned.strip().replace("{GS}", "\u001d").replace('\u241d', SEPARATOR);
    if (text.isEmpty()) {
      return refused(ScanFault.Kind.EMPTY, 1, "", "", "");
    }
    if (text.length() > LONGEST) {
      String longest = Integer.toString(LONGEST);
      return refused(
          ScanFault.Kind.TOO_MUCH, LONGEST, "", Integer.toString(text.length()), longest);
    }
    return new ElementString(yearNow).read(text);
  }

  private static Reading refused(
      ScanFault.Kind kind, int at, String element, String found, String expected) {
    return new Reading.Refused(new ScanFault(kind, at, element, found, expected));
  }

  private Reading read(String text) {
    Matcher symbology = SYMBOLOGY.matcher(text);
    boolean announced = symbology.lookingAt();
    int from = announced ? 3 : 0;
    if (announced && !List.of("d1", "d2", "C1").contains(symbology.group(1))) {
      return refused(ScanFault.Kind.SYMBOLOGY, 1, "", symbology.group(), "]d1, ]d2, ]C1");
    }
    if (from < text.length() && text.charAt(from) == SEPARATOR) {
      from++;
    }
    if (text.startsWith("(", from)) {
      return bracketed(text, from);
    }
    String rest = text.substring(from);
    if (rest.matches("\\d{13,14}") && CheckDigit.holds(rest)) {
      String gtin = "0".repeat(14 - rest.length()) + rest;
      return new Reading.Understood(new MakersCode(gtin, null, null, null, null, null));
    }
    boolean separatorsKept = announced || rest.indexOf(SEPARATOR) >= 0;
    return separatorsKept ? strictly(text, from) : inEveryWay(text, from);
  }

  private Reading strictly(String text, int from) {
    Fields fields = new Fields(yearNow);
    int at = from;
    while (at < text.length()) {
      Optional<Element> element = Element.at(text, at);
      if (element.isEmpty()) {
        String found = text.substring(at, Math.min(text.length(), at + 4));
        return refused(ScanFault.Kind.ELEMENT_UNKNOWN, at + 1, "", found, "");
      }
      int value = at + element.get().identifier().length();
      int end = end(text, element.get(), value);
      Optional<ScanFault> fault = fields.put(element.get(), text.substring(value, end), value + 1);
      if (fault.isPresent()) {
        return new Reading.Refused(fault.get());
      }
      at = end < text.length() && text.charAt(end) == SEPARATOR ? end + 1 : end;
    }
    return fields.isEmpty()
        ? refused(ScanFault.Kind.EMPTY, from + 1, "", "", "")
        : new Reading.Understood(fields.code());
  }

  private static int end(String text, Element element, int from) {
    int separator = text.indexOf(SEPARATOR, from);
    int last = separator < 0 ? text.length() : separator;
    return element.fixed() ? Math.min(last, from + element.length()) : last;
  }

  private Reading bracketed(String text, int from) {
    Matcher bracket = BRACKET.matcher(text);
    Fields fields = new Fields(yearNow);
    int at = from;
    while (at < text.length()) {
      if (!bracket.find(at) || bracket.start() != at) {
        int close = text.indexOf(')', at);
        String found = text.substring(at, close < 0 ? Math.min(text.length(), at + 6) : close + 1);
        return refused(ScanFault.Kind.ELEMENT_UNKNOWN, at + 1, "", found, "");
      }
      Element element = Element.at(bracket.group(1), 0).orElseThrow();
      int value = bracket.end();
      int end = bracket.find() ? bracket.start() : text.length();
      if (element.fixed() && end - value > element.length()) {
        // what follows a field of set length must be another field, known or not
        end = value + element.length();
      }
      Optional<ScanFault> fault = fields.put(element, text.substring(value, end), value + 1);
      if (fault.isPresent()) {
        return new Reading.Refused(fault.get());
      }
      at = end;
    }
    return new Reading.Understood(fields.code());
  }

  private Reading inEveryWay(String text, int from) {
    List<MakersCode> ways = new ArrayList<>();
    collect(text, from, new EnumMap<>(Element.class), ways);
    if (ways.isEmpty()) {
      return strictly(text, from);
    }
    return ways.size() == 1
        ? new Reading.Understood(ways.get(0))
        : new Reading.Several(ways.subList(0, Math.min(ways.size(), MOST_WAYS)));
  }

  private void collect(String text, int at, Map<Element, String> sofar, List<MakersCode> ways) {
    if (at == text.length()) {
      Fields fields = new Fields(yearNow);
      boolean sound =
          sofar.entrySet().stream()
              .allMatch(one -> fields.put(one.getKey(), one.getValue(), 1).isEmpty());
      if (sound) {
        ways.add(fields.code());
      }
      return;
    }
    Element element = Element.at(text, at).orElse(null);
    if (element == null || sofar.containsKey(element) || ways.size() >= MOST_WAYS) {
      return;
    }
    int value = at + element.identifier().length();
    int longest = Math.min(text.length() - value, element.length());
    int shortest = element.fixed() ? element.length() : 1;
    for (int length = longest; length >= shortest; length--) {
      Map<Element, String> longer = new EnumMap<>(Element.class);
      longer.putAll(sofar);
      longer.put(element, text.substring(value, value + length));
      collect(text, value + length, longer, ways);
    }
  }
}
