package kerfwright.physics.cutting;

import kerfwright.quantity.Check;

/**
 * Constants of the cutting models that no handbook tells; each may be drawn from its range.
 *
 * @param shakenMassKg m_e, mass of instrument and rotor that run-out shakes: 0.7 g (0.35 to 1.4),
 *     so that a run-out of 5 micrometres puts the greatest rate at 200 000 1/min under 1.5 N
 *     (DC025; the factor two by which DC025 fixes it)
 * @param tipRoundingM h0, rounding of the tip of a new grain: 0.35 micrometres (0.2 to 1), so that
 *     coarse grit meets leucite glass-ceramic with half its load along the rim (DC037, DC038)
 * @param freshShare share of a groove that is cut in ground no other grain has just grooved, fitted
 *     to the rates of calibration sources within a factor of five
 * @param slidingFactor lambda of {@link CrackThreshold}: 1e5 (6e4 to 2e5)
 * @param crackVolume a, share of a grain's crack volume that comes away: 0.03 (0.02 to 0.05), the
 *     most that still meets the steady rate in enamel (DC001 to DC013)
 * @param edgePointSpacingM t, distance of the points on which an edge rests in brittle work: 15
 *     micrometres (10 to 30), set by the glass of one test (DC066)
 */
public record CuttingConstants(
    double shakenMassKg,
    double tipRoundingM,
    double freshShare,
    double slidingFactor,
    double crackVolume,
    double edgePointSpacingM) {
  /** What the models take unless told otherwise. */
  public static final CuttingConstants TYPICAL =
      new CuttingConstants(0.7e-3, 0.35e-6, 0.7, 1e5, 0.03, 15e-6);

  public CuttingConstants {
    Check.notNegative("Mass shaken by run-out", "kg", shakenMassKg);
    Check.notNegative("Rounding of the tips", "m", tipRoundingM);
    Check.positive("Share of fresh ground", "of a groove", freshShare);
    Check.positive("Sliding factor of the crack threshold", "of K^4/H^3", slidingFactor);
    Check.notNegative("Share of a grain's crack volume", "of it", crackVolume);
    Check.positive("Distance of the points of an edge", "m", edgePointSpacingM);
  }
}
