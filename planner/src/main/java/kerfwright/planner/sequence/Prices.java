package kerfwright.planner.sequence;

import kerfwright.catalogue.instrument.InstrumentKind;

/**
 * What wear, changes and risk are worth in seconds of chair time. All project settings, open to the
 * practice's own figures.
 */
final class Prices {
  private static final double LIFE_S = 60;
  private static final double SINTERED_COSTS_MORE = 3;

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
  static final double ENAMEL_S_PER_M = 10 / 1e-6;

  private Prices() {}

  /** One whole instrument; a sintered one costs three times as much. */
  static double ofLife(InstrumentKind kind) {
    return kind == InstrumentKind.SINTERED_DIAMOND ? SINTERED_COSTS_MORE * LIFE_S : LIFE_S;
  }
}
