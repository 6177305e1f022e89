package kerfwright.physics.cutting;

import kerfwright.quantity.Check;

/**
 * The abrasive working part as the model needs it.
 *
 * @param grainSizeM grain size d
 * @param protrusionShare how far grains stand out of the bond, share of d
 * @param grainHardnessPa hardness of the grain
 * @param rigidity 1 for a rigid bond; below 1 for elastic bonds of polishers and discs, which let
 *     grains sink in so that each bites less
 * @param runOutM eccentricity of the turning head
 */
public record AbrasiveTool(
    double grainSizeM,
    double protrusionShare,
    double grainHardnessPa,
    double rigidity,
    double runOutM) {
  public AbrasiveTool {
    Check.positive("Grain size", "m", grainSizeM);
    Check.positive("Protrusion of the grains", "of their size", protrusionShare);
    Check.positive("Hardness of the grains", "Pa", grainHardnessPa);
    Check.positive("Rigidity of the bond", "of a rigid one", rigidity);
    Check.notNegative("Run-out", "m", runOutM);
  }

  /** Room for chips above the bond, m. */
  public double chipRoomM() {
    return protrusionShare * grainSizeM;
  }
}
