package kerfwright.physics.heat;

import kerfwright.quantity.Check;

/**
 * Says how far water keeps the contact of instrument and tooth wetted: it does as long as neither
 * the heat of the contact boils it away as a film nor the flow is too little to carry the heat.
 *
 * <pre>
 *   s   = s(q / q_c) s(P / P_m),   s(x) = 1 / (1 + x^4),   q = P / A
 *   P_m = psi m c (100 degC - T_w)
 *   f   = 1 - s (1 - e)            share of the dry heat that still enters the tooth
 *
 *   s     wetted share, 0 dry to 1 wet       P    power at the contact, W
 *   q_c   flux of film boiling, W/m2         A    area of contact, m2
 *   psi   share of the spray that reaches the contact        m   mass flow of water, kg/s
 *   c     4180 J/(kg K)                      T_w  temperature of the water, degC
 *   e     share of the dry heat that enters a tooth under a wetted contact
 * </pre>
 *
 * <p>Between 0.8 and 0.2 lies a factor of two (form ours). q_c about 8 W/mm2 (5 to 15): burn-out in
 * creep-feed grinding with water-based fluid; psi 0.05 to 0.4: both from memory. e = h_w / (h_w +
 * h_f) = 0.15, with h_f = 2.5e4 W/(m2 K) measured in a grinding contact under a mist (J Manuf Sci
 * Eng 2011, 4003947, abstract) and h_w = 4 to 5 kW/(m2 K) what tooth takes up under a moving hand.
 *
 * <p>Valid for hand-held cutting under spray or jet. Leaves out: steam carried off, the direction
 * of the jet, the hydrophobic clogged instrument.
 *
 * @param fluxLimitWPerM2 q_c
 * @param reachingShare psi
 */
public record WettedContact(double fluxLimitWPerM2, double reachingShare) {
  /** What enters under a wetted contact, share of what enters a dry one. */
  static final double WET_HEAT_SHARE = 0.15;

  private static final double WATER_J_PER_KG_K = 4180;
  private static final double BOILING_C = 100;

  public WettedContact {
    Check.positive("Flux limit", "W/m2", fluxLimitWPerM2);
    Check.positive("Share of the spray that reaches the contact", "1", reachingShare);
  }

  /** The wetted share s. */
  public double wettedShare(double powerW, double areaM2, double flowMlPerMin, double waterC) {
    Check.positive("Area of contact", "m2", areaM2);
    if (flowMlPerMin <= 0) {
      return 0;
    }
    double carriedW =
        reachingShare
            * (flowMlPerMin * 1e-3 / 60)
            * WATER_J_PER_KG_K
            * Math.max(1, BOILING_C - waterC);
    return below(powerW / areaM2 / fluxLimitWPerM2) * below(powerW / carriedW);
  }

  /** Share f of the dry heat that enters the tooth under a contact wetted so far. */
  public static double heatShare(double wettedShare) {
    return 1 - wettedShare * (1 - WET_HEAT_SHARE);
  }

  private static double below(double x) {
    return 1 / (1 + x * x * x * x);
  }
}
