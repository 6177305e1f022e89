package kerfwright.physics.cutting;

import kerfwright.physics.material.Substance;

/**
 * What chips that stick leave of a working part's cut: clean share = 1 / (1 + t / (flush r)).
 *
 * <p>t = G (Q / (v b)) D / (1 + D/D0), D = K_c / H, is the layer left on the rim in a turn,
 * weighted by how ductile the work is, up to a level; r the room for chips, above the bond or in
 * the flutes; flush = 0.1 + 0.9 w/50, how well water carries chips off.
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>Q</td><td>m3/s</td><td>removal rate of the clean working part</td></tr>
 *   <tr><td>v, b</td><td>m/s, m</td><td>rim speed, engaged length</td></tr>
 *   <tr><td>K_c / H</td><td>sqrt(m)</td><td>inverse brittleness of the work; D0 = 0.01 sqrt(m), above
 *       which more ductile work sticks no worse (project setting)</td></tr>
 *   <tr><td>w</td><td>mL/min</td><td>coolant</td></tr>
 *   <tr><td>G</td><td>1/sqrt(m)</td><td>1.6e6: a third of a coarse diamond's cut lost in dentine (project
 *       setting)</td></tr>
 * </table>
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
    double stuck = STICKING_PER_SQRT_M * layer * ductility / (1 + ductility / LEVEL_SQRT_M);
    double flush = 0.1 + 0.9 * point.coolantMlPerMin() / 50;
    return 1 / (1 + stuck / (flush * roomM));
  }
}
