package kerfwright.physics.cutting;

import kerfwright.physics.material.Substance;

/**
 * Removal rate of an abrasive working part from the load on each active grain.
 *
 * <pre>
 *   Q     = q eps v F [ 0.3 f_ab (1 - c)/H + a c V(P_m)/P_m ] held able rinse g clean
 *   F_t   = F ( 0.2 + 0.4 eps )
 *   eps   = s h/(h + h0),  h = sqrt( P/(c0 H) )  how well a tip grooves instead of rubbing
 *   P0    = 2 c0 H s_h^2                       load of an active grain while few carry, s_h = 0.005 d g
 *   N     = N0 (1 - exp(-F/(N0 P0)))           active grains, N0 = A/(1.6 d)^2, at least one
 *   P     = F/N                                mean load of an active grain
 *   c     = exp(-x) (x^2/2 + x + 1)            share of the load on grains above P_c, x = sqrt(2 P_c/P)
 *   P_m   = P (x^2/2 + x + 1)                  mean load of those grains
 *   f_ab  = 0.15 + 0.45/(1 + (K_c/H)/0.002)    K_c/H in sqrt(m)
 *   rinse = 0.5 + 0.5 w/(w + 15)               w in mL/min
 * </pre>
 *
 * <p>Grains stand at exponentially spread heights (Greenwood JA, Williamson JBP. Proc R Soc A
 * 1966;295:300-319, from memory); a grain sunk to depth y carries c0 H y^2. Then the mean load of
 * an active grain is P0 whatever the total load, and more load brings more grains in, up to all of
 * them. Below the crack threshold P_c a grain ploughs, above it cracks lift the volume V of {@link
 * CrackThreshold}.
 *
 * <p>A sharp cone that ploughs is held along the rim by 2/pi of the cotangent of its half-angle,
 * here 0.3 (0.2 to 0.35 for the mean rake of grains, textbook of grinding, excerpt), and by
 * friction, 0.1; a blunt tip only rubs, at 0.2. One efficiency eps serves removal and force, so
 * that fine or worn grit neither cuts nor holds like coarse. A groove then costs no less than (H /
 * f_ab) (1 + 0.1/0.3): the work that an ideal cone spends on it. Run-out takes its part ({@link
 * RunOut}, held) without sparing the heat, a tool hardly harder than the work loses its edge
 * ({@link HardnessRatio}, able), soft chips stick ({@link ChipLoading}, clean).
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>Q</td><td>m3/s</td><td>removal rate</td></tr>
 *   <tr><td>F, F_t, v</td><td>N, N, m/s</td><td>load of the hand, force along the rim, rim speed</td></tr>
 *   <tr><td>d, g</td><td>m, -</td><td>grain size, rigidity of the bond</td></tr>
 *   <tr><td>A</td><td>m2</td><td>area of contact</td></tr>
 *   <tr><td>s, w</td><td>-, mL/min</td><td>sharpness, coolant</td></tr>
 *   <tr><td>h, h0</td><td>m</td><td>mean bite of a grain, rounding of a new grain's tip</td></tr>
 *   <tr><td>H, K_c</td><td>Pa, Pa sqrt(m)</td><td>hardness and toughness of the work</td></tr>
 *   <tr><td>q, a</td><td>-</td><td>{@link CuttingConstants}: fresh share of a groove, share of the
 *       crack volume that comes away</td></tr>
 *   <tr><td>c0</td><td>-</td><td>12: load over hardness and depth squared of one grain (project
 *       setting)</td></tr>
 *   <tr><td>f_ab</td><td>-</td><td>share of the groove lifted out rather than pushed aside: 0.15 for
 *       very ductile to 0.6 for brittle work (Zum Gahr KH. Microstructure and Wear of Materials, 1987,
 *       from memory)</td></tr>
 * </table>
 *
 * <p>Published rates differ by a factor of eighty in like work: order of magnitude only. Valid
 * where the contact is small against the head, for the load of a hand and the speeds of {@link
 * RunOut}. More load never takes less as long as E/H is above 2, which holds for every solid.
 * Leaves out: heat softening, bond contact at high load, grains breaking.
 */
public final class AbrasiveCutting {
  private static final double GRAIN_SPACING = 1.6;
  private static final double HEIGHT_SCALE = 0.005;
  static final double INDENT_FACTOR = 12;
  private static final double PLOUGHING_RATIO = 0.3;
  private static final double RUBBING_RATIO = 0.2;
  private static final double GROOVING_RATIO = 0.4;

  private AbrasiveCutting() {}

  /** Greatest ratio of force along the rim to load: every tip grooves. */
  public static double greatestForceRatio() {
    return RUBBING_RATIO + GROOVING_RATIO;
  }

  /** Ratio of force along the rim to load at an operating point; it does not depend on speed. */
  public static double forceRatio(
      CuttingConstants constants,
      AbrasiveTool tool,
      Substance work,
      Engagement contact,
      double loadN,
      double sharpness) {
    double grainLoad = grainLoadN(tool, work, contact, loadN);
    return RUBBING_RATIO
        + GROOVING_RATIO * sharpness * grooving(constants, biteM(grainLoad, work.hardnessPa()));
  }

  /** Mean load of an active grain, N. */
  private static double grainLoadN(
      AbrasiveTool tool, Substance work, Engagement contact, double loadN) {
    double d = tool.grainSizeM();
    double spacing = GRAIN_SPACING * d;
    double grains = Math.max(1, contact.areaM2() / (spacing * spacing));
    double height = HEIGHT_SCALE * d * tool.rigidity();
    double soleLoad = 2 * INDENT_FACTOR * work.hardnessPa() * height * height;
    double active = grains * -Math.expm1(-loadN / (grains * soleLoad));
    return active > 0 ? loadN / active : 0;
  }

  /** How deep a sharp tip sinks in under a load. */
  static double biteM(double grainLoadN, double hardnessPa) {
    return grainLoadN > 0 ? Math.sqrt(grainLoadN / (INDENT_FACTOR * hardnessPa)) : 0;
  }

  /** How well a new tip grooves at a bite, 0 to 1. */
  private static double grooving(CuttingConstants constants, double biteM) {
    return biteM > 0 ? biteM / (biteM + constants.tipRoundingM()) : 0;
  }

  /** The cut at one operating point with the usual constants. */
  public static CutResult cut(
      AbrasiveTool tool, Substance work, Engagement contact, OperatingPoint point) {
    return cut(CuttingConstants.TYPICAL, tool, work, contact, point);
  }

  /** The cut at one operating point. */
  public static CutResult cut(
      CuttingConstants constants,
      AbrasiveTool tool,
      Substance work,
      Engagement contact,
      OperatingPoint point) {
    double load = point.loadN();
    double grainLoad = grainLoadN(tool, work, contact, load);
    double bite = biteM(grainLoad, work.hardnessPa());
    double efficiency = point.sharpness() * grooving(constants, bite);
    CrackedShare cracked =
        CrackedShare.of(work, grainLoad, constants.slidingFactor(), constants.crackVolume());

    double volumePerWork =
        PLOUGHING_RATIO * liftedShare(work) * (1 - cracked.share()) / work.hardnessPa()
            + cracked.volumePerLoad();
    double held =
        RunOut.cuttingShare(
            load,
            point.rimSpeedMPerS(),
            contact.diameterM(),
            tool.runOutM(),
            constants.shakenMassKg());
    double sharp =
        HardnessRatio.cuttingShare(tool.grainHardnessPa(), work.hardnessPa())
            * efficiency
            * held
            * debrisShare(point.coolantMlPerMin())
            * tool.rigidity();
    double dry = constants.freshShare() * sharp * point.rimSpeedMPerS() * load * volumePerWork;
    double clean = ChipLoading.cleanShare(dry, point, contact, work, tool.chipRoomM());
    double tangential = load * (RUBBING_RATIO + GROOVING_RATIO * efficiency);
    return new CutResult(
        dry * clean,
        tangential,
        tangential * point.rimSpeedMPerS(),
        cracked.share(),
        grainLoad,
        bite,
        clean,
        liftedShare(work),
        0);
  }

  /** Share of a groove that leaves as chip. */
  static double liftedShare(Substance work) {
    double ductility = work.toughnessPaSqrtM() / work.hardnessPa();
    return 0.15 + 0.45 / (1 + ductility / 2e-3);
  }

  /** Debris under the contact: rate rose with flow from 15 to 44 mL/min (DC020; form ours). */
  private static double debrisShare(double coolantMlPerMin) {
    return 0.5 + 0.5 * coolantMlPerMin / (coolantMlPerMin + 15);
  }
}
