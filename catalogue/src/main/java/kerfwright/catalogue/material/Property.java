package kerfwright.catalogue.material;

import kerfwright.quantity.Identified;

/** Properties of materials, each with the one unit its tables use. */
public enum Property implements Identified {
  HARDNESS("Hardness", "GPa", 1e9),
  YOUNG_MODULUS("Young's modulus", "GPa", 1e9),
  YOUNG_MODULUS_IN_FLEXURE("Young's modulus in flexure", "GPa", 1e9),
  FRACTURE_TOUGHNESS("Fracture toughness", "MPa*m^0.5", 1e6),
  SHORT_CRACK_TOUGHNESS("Fracture toughness of short cracks", "MPa*m^0.5", 1e6),
  BRITTLENESS_INDEX("Brittleness index H E / K_c^2", "1/um", 1e6),
  DENSITY("Density", "kg/m3", 1),
  THERMAL_CONDUCTIVITY("Thermal conductivity", "W/mK", 1),
  THERMAL_DIFFUSIVITY("Thermal diffusivity", "m2/s", 1),
  SPECIFIC_HEAT("Specific heat", "J/kgK", 1),
  SPECIFIC_CUTTING_ENERGY("Specific cutting energy", "J/mm3", 1e9),
  WATER_EFFECT_ON_HARDNESS("Change of hardness in water", "%", 0.01),
  ALPHA_CASE_THICKNESS("Thickness of the cast surface layer", "um", 1e-6),
  FLEXURAL_STRENGTH("Flexural strength", "MPa", 1e6),
  HARD_PHASE_HARDNESS("Hardness of the hardest phase", "GPa", 1e9),
  HARD_PHASE_SHARE("Volume share of the hardest phase", "1", 1);

  private final String label;
  private final String unit;
  private final double toSi;

  Property(String label, String unit, double toSi) {
    this.label = label;
    this.unit = unit;
    this.toSi = toSi;
  }

  public String label() {
    return label;
  }

  public String unit() {
    return unit;
  }

  /** A value in the unit of the tables, in SI units. */
  double toSi(double value) {
    return value * toSi;
  }
}
