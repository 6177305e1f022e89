package kerfwright.planner.plan;

import kerfwright.quantity.Identified;

/** How the instrument is led. Instruments turn clockwise seen from the shank. */
public enum Stroke implements Identified {
  AGAINST_ROTATION("against rotation"),
  WITH_ROTATION("with rotation"),
  AXIAL("axial, short pecks"),
  BRUSHING("brushing");

  private final String label;

  Stroke(String label) {
    this.label = label;
  }

  public String label() {
    return label;
  }
}
