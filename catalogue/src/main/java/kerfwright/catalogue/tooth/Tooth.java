package kerfwright.catalogue.tooth;

/**
 * A tooth, by its FDI number (ISO 3950): quadrant 1 to 4 permanent, 5 to 8 primary, then the
 * position from the midline.
 */
public record Tooth(int fdi) {
  public Tooth {
    int quadrant = fdi / 10;
    int position = fdi % 10;
    boolean permanent = quadrant >= 1 && quadrant <= 4 && position >= 1 && position <= 8;
    boolean primary = quadrant >= 5 && quadrant <= 8 && position >= 1 && position <= 5;
    if (!permanent && !primary) {
      throw new IllegalArgumentException(
          "FDI number must be 11 to 18, 21 to 28, 31 to 38, 41 to 48 or 51 to 55, 61 to 65, 71 to"
              + " 75, 81 to 85; got "
              + fdi);
    }
  }

  /** Position from the midline, 1 to 8, primary 1 to 5. */
  public int position() {
    return fdi % 10;
  }

  public boolean primary() {
    return fdi / 10 > 4;
  }

  public boolean upper() {
    int quadrant = (fdi / 10 - 1) % 4;
    return quadrant == 0 || quadrant == 1;
  }

  /** The patient's right. */
  public boolean right() {
    int quadrant = (fdi / 10 - 1) % 4;
    return quadrant == 0 || quadrant == 3;
  }

  public ToothClass toothClass() {
    int i = position();
    if (i <= 2) {
      return ToothClass.INCISOR;
    }
    if (i == 3) {
      return ToothClass.CANINE;
    }
    return primary() || i >= 6 ? ToothClass.MOLAR : ToothClass.PREMOLAR;
  }
}
