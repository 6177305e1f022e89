package kerfwright.catalogue.number;

import kerfwright.catalogue.Remark;

/** A text that is no ISO 6360 number: says where, what stands there and what was expected. */
public final class MalformedNumberException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final int position;
  private final String found;
  private final String expected;
  private final String code;
  private final transient Object at;

  /**
   * @param code which fault it is
   * @param at what the fault names: digits so far, or the character
   */
  MalformedNumberException(
      String text, int position, String found, String expected, String code, Object at) {
    super(
        "'"
            + shortened(text)
            + "' is no ISO 6360 number"
            + (position > 0 ? ", at character " + position : "")
            + ": found "
            + found
            + ", expected "
            + expected);
    this.position = position;
    this.found = found;
    this.expected = expected;
    this.code = code;
    this.at = at;
  }

  /** Character of the text, counted from 1; 0 where the text as a whole is meant. */
  public int position() {
    return position;
  }

  public String found() {
    return found;
  }

  public String expected() {
    return expected;
  }

  /** What was expected, and where something else stands. */
  public Remark remark() {
    return Remark.of(code, at, position);
  }

  private static String shortened(String text) {
    return text.length() <= 60 ? text : text.substring(0, 57) + "...";
  }
}
