package kerfwright.planner.plan;

/** How the instrument is led. Instruments turn clockwise seen from the shank. */
public enum Stroke {
  AGAINST_ROTATION("against-rotation", "against rotation"),
  WITH_ROTATION("with-rotation", "with rotation"),
  AXIAL("axial", "axial, short pecks"),
  BRUSHING("brushing", "brushing");

  private final String id;
  private final String label;

  Stroke(String id, String label) {
    this.id = id;
    this.label = label;
  }

  public String id() {
    return id;
  }

  public String label() {
    return label;
  }
}
