package kerfwright.physics.heat;

import kerfwright.quantity.Check;

/**
 * What flows over a surface: heat leaves at h (T - T of the coolant).
 *
 * @param coefficientWPerM2K heat transfer coefficient h; zero is a surface that loses nothing
 * @param temperatureC temperature of the coolant
 */
public record Coolant(double coefficientWPerM2K, double temperatureC) {
  /** Nothing flows: the surface is taken as losing no heat. */
  public static final Coolant NONE = new Coolant(0, 0);

  public Coolant {
    Check.notNegative("Heat transfer coefficient", "W/(m2 K)", coefficientWPerM2K);
    Check.finite("Coolant temperature", "degC", temperatureC);
  }
}
