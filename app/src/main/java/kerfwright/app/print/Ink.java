package kerfwright.app.print;

/** Draws black on pages measured in millimetres from their upper left corner. */
public interface Ink {
  /** Begins a page. */
  void page(double widthMm, double heightMm);

  /** Fills a rectangle. */
  void box(double xMm, double yMm, double widthMm, double heightMm);

  /** Writes one line; y is its base line. */
  void text(double xMm, double yMm, double sizeMm, boolean bold, String text);

  /** How long a line gets, mm. */
  double width(String text, double sizeMm, boolean bold);
}
