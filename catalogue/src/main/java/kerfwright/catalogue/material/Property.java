package kerfwright.catalogue.material;

import java.util.Arrays;
import java.util.Optional;

/** Properties of materials, each with the one unit its tables use. */
public enum Property {
  HARDNESS("hardness", "Hardness", "GPa", 1e9),
  YOUNG_MODULUS("young-modulus", "Young's modulus", "GPa", 1e9),
  YOUNG_MODULUS_IN_FLEXURE("young-modulus-in-flexure", "Young's modulus in flexure", "GPa", 1e9),
  FRACTURE_TOUGHNESS("fracture-toughness", "Fracture toughness", "MPa*m^0.5", 1e6),
  SHORT_CRACK_TOUGHNESS(
      "short-crack-toughness", "Fracture toughness of short cracks", "MPa*m^0.5", 1e6),
  BRITTLENESS_INDEX("brittleness-index", "Brittleness index H E / K_c^2", "1/um", 1e6),
  DENSITY("density", "Density", "kg/m3", 1),
  THERMAL_CONDUCTIVITY("thermal-conductivity", "Thermal conductivity", "W/mK", 1),
  THERMAL_DIFFUSIVITY("thermal-diffusivity", "Thermal diffusivity", "m2/s", 1),
  SPECIFIC_HEAT("specific-heat", "Specific heat", "J/kgK", 1),
  SPECIFIC_CUTTING_ENERGY("specific-cutting-energy", "Specific cutting energy", "J/mm3", 1e9),
  WATER_EFFECT_ON_HARDNESS("water-effect-on-hardness", "Change of hardness in water", "%", 0.01),
  ALPHA_CASE_THICKNESS("alpha-case-thickness", "Thickness of the cast surface layer", "um", 1e-6),
  FLEXURAL_STRENGTH("flexural-strength", "Flexural strength", "MPa", 1e6),
  HARD_PHASE_HARDNESS("hard-phase-hardness", "Hardness of the hardest phase", "GPa", 1e9),
  HARD_PHASE_SHARE("hard-phase-share", "Volume share of the hardest phase", "1", 1);

  private final String id;
  private final String label;
  private final String unit;
  private final double toSi;

  Property(String id, String label, String unit, double toSi) {
    this.id = id;
    this.label = label;
    this.unit = unit;
    this.toSi = toSi;
  }

  public String id() {
    return id;
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

  public static Optional<Property> of(String id) {
    return Arrays.stream(values()).filter(p -> p.id.equals(id)).findFirst();
  }
}
