package kerfwright.planner.sequence;

/**
 * What wear, changes and risk are worth in seconds of chair time. All project settings, open to the
 * practice's own figures.
 */
final class Prices {
  /** One whole instrument. */
  static final double LIFE_S = 60;

  /** Another instrument in the same handpiece. */
  static final double CHANGE_S = 15;

  /** Another handpiece as well. */
  static final double HANDPIECE_S = 25;

  /** A tenth of a millimetre too deep. */
  static final double SLIP_S_PER_M = 10 / 100e-6;

  /** A micrometre of damage left in a surface that stays. */
  static final double DAMAGE_S_PER_M = 0.5 / 1e-6;

  /** A sharp inner corner left in a cavity. */
  static final double SHARP_CORNER_S = 12;

  /** A micrometre of sound enamel lost. */
  static final double ENAMEL_S_PER_M = 3 / 1e-6;

  private Prices() {}
}
