package kerfwright.app.label;

/**
 * A sheet of equal labels. Margins are equal left and right, and above and below; what is left is
 * shared among the labels.
 *
 * @param widthMm of the page
 * @param heightMm of the page
 * @param columns labels beside each other
 * @param rows labels below each other
 * @param marginXMm left and right of all labels
 * @param marginYMm above and below all labels
 * @param gapXMm between columns
 * @param gapYMm between rows
 */
public record LabelSheet(
    double widthMm,
    double heightMm,
    int columns,
    int rows,
    double marginXMm,
    double marginYMm,
    double gapXMm,
    double gapYMm) {
  /** A usual A4 sheet: 3 by 8 labels of 70 by 37 mm without gaps. */
  public static final LabelSheet USUAL = new LabelSheet(210, 297, 3, 8, 0, 0.5, 0, 0);

  /** Fewest millimetres a label has room in: code of 7.2 mm with its quiet zone. */
  static final double SMALLEST_HEIGHT_MM = 9;

  static final double SMALLEST_WIDTH_MM = 18;

  public int perSheet() {
    return columns * rows;
  }

  public double labelWidthMm() {
    return (widthMm - 2 * marginXMm - (columns - 1) * gapXMm) / columns;
  }

  public double labelHeightMm() {
    return (heightMm - 2 * marginYMm - (rows - 1) * gapYMm) / rows;
  }

  /** Left edge of a label counted along the rows from 0, mm. */
  double xMm(int place) {
    return marginXMm + place % columns * (labelWidthMm() + gapXMm);
  }

  double yMm(int place) {
    return marginYMm + place / columns * (labelHeightMm() + gapYMm);
  }

  boolean hasRoom() {
    return labelWidthMm() >= SMALLEST_WIDTH_MM && labelHeightMm() >= SMALLEST_HEIGHT_MM;
  }
}
