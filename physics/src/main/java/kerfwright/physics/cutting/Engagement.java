package kerfwright.physics.cutting;

import kerfwright.quantity.Check;

/**
 * How the working part meets the layer: local diameter, length along the axis in contact, radial
 * depth of cut. The contact arc is that of a cylinder cutting a flat: l_c = sqrt(a D) for a << D
 * (Malkin S, Guo C. Grinding Technology, 2nd ed. 2008, ch. 3, from memory; derivation elementary).
 *
 * @param diameterM local diameter D
 * @param engagedLengthM length along the axis in contact, b
 * @param depthOfCutM radial depth of cut a, at most D
 */
public record Engagement(double diameterM, double engagedLengthM, double depthOfCutM) {
  public Engagement {
    Check.positive("Diameter", "m", diameterM);
    Check.positive("Engaged length", "m", engagedLengthM);
    Check.positive("Depth of cut", "m", depthOfCutM);
    depthOfCutM = Math.min(depthOfCutM, diameterM);
  }

  /** Length of the contact arc, m. */
  public double arcLengthM() {
    return Math.sqrt(depthOfCutM * diameterM);
  }

  /** Area of contact between working part and layer, m2. */
  public double areaM2() {
    return engagedLengthM * arcLengthM();
  }

  /** Share of the circumference in contact: engagement angle over a full turn. */
  public double arcShare() {
    return ChipGeometry.engagementAngleRad(depthOfCutM, diameterM) / (2 * Math.PI);
  }
}
