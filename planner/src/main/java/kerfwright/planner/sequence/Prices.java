package kerfwright.planner.sequence;

import kerfwright.catalogue.instrument.InstrumentKind;

/**
 * What wear, changes and risk are worth in seconds of chair time. All project settings, open to the
 * practice's own figures.
 */
public final class Prices {
  private static final double LIFE_S = 60;
  private static final double SINTERED_COSTS_MORE = 3;

  /** What one layer may take of an edge's life. */
  private static final double EDGE_SHARE = 1.0 / 3;

  /** Another instrument in the same handpiece. */
  static final double CHANGE_S = 20;

  /** Another handpiece as well. */
  static final double HANDPIECE_S = 30;

  /** A tenth of a millimetre too deep. */
  static final double SLIP_S_PER_M = 10 / 100e-6;

  /** A micrometre of damage left in a surface that stays. */
  static final double DAMAGE_S_PER_M = 0.5 / 1e-6;

  /** A sharp inner corner left in a cavity. */
  static final double SHARP_CORNER_S = 12;

  /** A micrometre of sound enamel lost. */
  static final double ENAMEL_S_PER_M = 20 / 1e-6;

  private Prices() {}

  /** A bur that one layer costs more than a third of an edge life is spoilt for the next. */
  private static final double SPOILT_S = 300;

  /** Wear of a step: its share of an instrument. */
  public static double ofWear(InstrumentKind kind, double lives) {
    if (kind.bladed() && lives > EDGE_SHARE) {
      return SPOILT_S + lives * LIFE_S;
    }
    double life = kind == InstrumentKind.SINTERED_DIAMOND ? SINTERED_COSTS_MORE * LIFE_S : LIFE_S;
    return lives * life;
  }
}
