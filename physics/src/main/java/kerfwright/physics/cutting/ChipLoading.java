package kerfwright.physics.cutting;

import kerfwright.physics.material.Substance;

/**
 * What chips that stick leave of a working part's cut: clean share = 1 / (1 + t / (flush r)).
 *
 * <p>t = min(G (Q / (v b)) D / (1 + D/D0), Q T/(pi d b)), D = K_c / H, is the layer stuck to the
 * rim. The first is what it comes to while the head stays in the work: what is cut in a turn, times
 * as many turns as ductile work sticks, up to a level. The second is all that a touch cuts, spread
 * over the rim: more cannot stick, as the head is rinsed or wiped clear between touches. r is the
 * room for chips, above the bond or in the flutes; flush = 0.1 + 0.9 w/50, how well water carries
 * chips off.
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>Q</td><td>m3/s</td><td>removal rate of the clean working part</td></tr>
 *   <tr><td>v, b, d</td><td>m/s, m, m</td><td>rim speed, engaged length, diameter</td></tr>
 *   <tr><td>T</td><td>s</td><td>one touch; infinite where the head is never lifted</td></tr>
 *   <tr><td>K_c / H</td><td>sqrt(m)</td><td>inverse brittleness of the work; D0 = 0.01 sqrt(m), above
 *       which more ductile work sticks no worse (project setting)</td></tr>
 *   <tr><td>w</td><td>mL/min</td><td>coolant</td></tr>
 *   <tr><td>G</td><td>1/sqrt(m)</td><td>1.6e6: a third of a coarse diamond's cut lost in dentine (project
 *       setting)</td></tr>
 * </table>
 *
 * <p>A number of turns is seconds in a turbine and minutes at 4000 1/min: in dentine (some 3700
 * turns) the touch decides below 3700/T, 44 000 1/min for 5 s, and not at all for T without end.
 * Valid where the head is cleared between touches; the layer of a touch is taken at its end.
 *
 * <p>Order of magnitude only. Leaves out: chips that come loose again, packing of chips between
 * blades as they turn. That chips load an instrument and limit it is read (Siegel SC, von
 * Fraunhofer JA 1997: debris loading and diamond wear limit; Song XF et al. 2016: chip loading
 * marked); the form is ours.
 */
final class ChipLoading {
  private static final double STICKING_PER_SQRT_M = 1.6e6;
  private static final double LEVEL_SQRT_M = 0.01;

  private ChipLoading() {}

  static double cleanShare(
      double removalM3PerS,
      OperatingPoint point,
      Engagement contact,
      Substance work,
      double roomM) {
    if (point.rimSpeedMPerS() <= 0) {
      return 1;
    }
    double layer = removalM3PerS / (point.rimSpeedMPerS() * contact.engagedLengthM());
    double ductility = work.toughnessPaSqrtM() / work.hardnessPa();
    double level = STICKING_PER_SQRT_M * layer * ductility / (1 + ductility / LEVEL_SQRT_M);
    double touch =
        removalM3PerS * point.touchS() / (Math.PI * contact.diameterM() * contact.engagedLengthM());
    double stuck = removalM3PerS > 0 ? Math.min(level, touch) : 0;
    double flush = 0.1 + 0.9 * point.coolantMlPerMin() / 50;
    return 1 / (1 + stuck / (flush * roomM));
  }
}
