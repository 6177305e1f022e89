package kerfwright.practice.label;

import java.util.Arrays;
import java.util.Optional;

/**
 * The elements read from a maker's package, by GS1 application identifier: GTIN and the dates have
 * a set length, the others run to a separator or the end (GS1 General Specifications, list of
 * application identifiers; lengths as in the table of the python-stdnum library).
 */
public enum Element {
  GTIN("01", 14, true),
  LOT("10", 20, false),
  PRODUCED("11", 6, true),
  EXPIRES("17", 6, true),
  SERIAL("21", 20, false),
  ADDITIONAL("240", 30, false);

  private final String identifier;
  private final int length;
  private final boolean fixed;

  Element(String identifier, int length, boolean fixed) {
    this.identifier = identifier;
    this.length = length;
    this.fixed = fixed;
  }

  /** The digits that announce it. */
  public String identifier() {
    return identifier;
  }

  /** Characters: exactly so many where {@link #fixed}, otherwise 1 to so many. */
  public int length() {
    return length;
  }

  public boolean fixed() {
    return fixed;
  }

  /** The element announced at this place of a text. */
  static Optional<Element> at(String text, int place) {
    return Arrays.stream(values())
        .filter(one -> text.startsWith(one.identifier, place))
        .findFirst();
  }
}
