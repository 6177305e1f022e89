package kerfwright.app.drawing;

/** Which point of a line of words is placed. */
public enum Anchor {
  START("start"),
  MIDDLE("middle"),
  END("end");

  private final String word;

  Anchor(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }
}
