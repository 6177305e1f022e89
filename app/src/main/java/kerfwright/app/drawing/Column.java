package kerfwright.app.drawing;

import kerfwright.app.words.Say;

/** Words one below another at the right of a drawing, broken where they are too long. */
public final class Column {
  private static final int LETTERS = 16;
  private static final double LINE = 14;

  private final Say say;
  private final Svg svg;
  private final double x;
  private double y;

  public Column(Say say, Svg svg, double x, double y) {
    this.say = say;
    this.svg = svg;
    this.x = x;
    this.y = y;
  }

  public void add(Type type, String words) {
    for (String line : Lines.of(say, words, LETTERS)) {
      svg.text(x, y, Anchor.START, type, line);
      y += LINE;
    }
  }

  public void gap() {
    y += LINE / 2;
  }
}
