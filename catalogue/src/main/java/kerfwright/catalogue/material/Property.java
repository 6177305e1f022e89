package kerfwright.catalogue.material;

import kerfwright.quantity.Identified;

/** Properties of materials, each with the one unit its tables use. */
public enum Property implements Identified {
  HARDNESS("GPa", 1e9),
  YOUNG_MODULUS("GPa", 1e9),
  YOUNG_MODULUS_IN_FLEXURE("GPa", 1e9),
  FRACTURE_TOUGHNESS("MPa*m^0.5", 1e6),
  SHORT_CRACK_TOUGHNESS("MPa*m^0.5", 1e6),
  BRITTLENESS_INDEX("1/um", 1e6),
  DENSITY("kg/m3", 1),
  THERMAL_CONDUCTIVITY("W/mK", 1),
  THERMAL_DIFFUSIVITY("m2/s", 1),
  SPECIFIC_HEAT("J/kgK", 1),
  SPECIFIC_CUTTING_ENERGY("J/mm3", 1e9),
  WATER_EFFECT_ON_HARDNESS("%", 0.01),
  ALPHA_CASE_THICKNESS("um", 1e-6),
  FLEXURAL_STRENGTH("MPa", 1e6),
  HARD_PHASE_HARDNESS("GPa", 1e9),
  HARD_PHASE_SHARE("1", 1);

  private final String unit;
  private final double toSi;

  Property(String unit, double toSi) {
    this.unit = unit;
    this.toSi = toSi;
  }

  public String unit() {
    return unit;
  }

  /** A value in the unit of the tables, in SI units. */
  double toSi(double value) {
    return value * toSi;
  }
}
