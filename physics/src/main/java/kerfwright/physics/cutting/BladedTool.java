package kerfwright.physics.cutting;

import kerfwright.quantity.Check;

/**
 * A bur's working part as the model needs it.
 *
 * @param blades number of blades z
 * @param edgeRadiusM radius of the cutting edge, new
 * @param edgeShare share of the blade's length that cuts: 1 for plain blades, less with cross cuts
 * @param hardnessPa hardness of the blade
 * @param runOutM eccentricity of the turning head
 * @param stiffnessNPerM lateral stiffness at the head, overhung shank and neck
 */
public record BladedTool(
    int blades,
    double edgeRadiusM,
    double edgeShare,
    double hardnessPa,
    double runOutM,
    double stiffnessNPerM) {
  public BladedTool {
    if (blades < 1) {
      throw new IllegalArgumentException("A bladed tool needs at least one blade, got " + blades);
    }
    Check.positive("Edge radius", "m", edgeRadiusM);
    Check.positive("Cutting share of the edge", "of its length", edgeShare);
    Check.positive("Hardness of the blades", "Pa", hardnessPa);
    Check.notNegative("Run-out", "m", runOutM);
    Check.positive("Stiffness at the head", "N/m", stiffnessNPerM);
  }
}
