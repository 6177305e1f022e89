package kerfwright.app.form;

/** Text for a cell of a list that people open in a spreadsheet. */
public final class CellText {
  private static final String COMPUTED = "=+-@\t\r";

  private CellText() {}

  /** A spreadsheet computes what begins with one of these signs; an apostrophe makes it text. */
  public static String of(String text) {
    return !text.isEmpty() && COMPUTED.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
