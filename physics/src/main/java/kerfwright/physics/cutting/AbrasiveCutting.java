package kerfwright.physics.cutting;

import kerfwright.physics.material.Substance;

/**
 * Removal rate of an abrasive working part from the load on each active grain.
 *
 * <pre>
 *   Q     = 0.03 v F able s rinse g [ f_ab (1 - c)/H + 0.10 c V(P_m)/P_m ] clean
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
 * CrackThreshold}. A tool hardly harder than the work loses its edge, see {@link HardnessRatio}
 * (able); soft chips stick, see {@link ChipLoading} (clean).
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>Q</td><td>m3/s</td><td>removal rate</td></tr>
 *   <tr><td>d, g</td><td>m, -</td><td>grain size, rigidity of the bond</td></tr>
 *   <tr><td>A</td><td>m2</td><td>area of contact</td></tr>
 *   <tr><td>F, v</td><td>N, m/s</td><td>load of the hand, rim speed</td></tr>
 *   <tr><td>s, w</td><td>-, mL/min</td><td>sharpness, coolant</td></tr>
 *   <tr><td>H, K_c</td><td>Pa, Pa sqrt(m)</td><td>hardness and toughness of the work</td></tr>
 *   <tr><td>c0</td><td>-</td><td>12: load over hardness and depth squared of one grain (project
 *       setting)</td></tr>
 *   <tr><td>f_ab</td><td>-</td><td>share of the groove lifted out rather than pushed aside: 0.15 for
 *       very ductile to 0.6 for brittle work (Zum Gahr KH. Microstructure and Wear of Materials, 1987,
 *       from memory)</td></tr>
 *   <tr><td>0.03, 0.10</td><td>-</td><td>share of the turn and of the contact that really cuts, and
 *       of the crack volume that comes away (project settings)</td></tr>
 * </table>
 *
 * <p>The project settings are chosen so that coarse grit at 1 N, 20 m/s and full water takes about
 * 20 mm3/min of enamel, between the 3 of a long unattended test and some 250 of a short one in mica
 * glass-ceramic: order of magnitude only. Valid where the contact is small against the head and v
 * far above the feed. Proportional to v; more load never takes less as long as E/H is above 2,
 * which holds for every solid. Leaves out: heat softening, bond contact at high load, grains
 * breaking.
 */
public final class AbrasiveCutting {
  private static final double GRAIN_SPACING = 1.6;
  private static final double HEIGHT_SCALE = 0.005;
  private static final double INDENT_FACTOR = 12;
  private static final double CRACK_VOLUME = 0.10;
  private static final double WHOLE_CONTACT = 0.03;
  private static final double FORCE_RATIO = 0.5;

  private AbrasiveCutting() {}

  /** Ratio of force along the rim to load: 0.4 to 0.6 in leucite glass-ceramic (DC037, DC038). */
  public static double forceRatio() {
    return FORCE_RATIO;
  }

  /** The cut at one operating point. */
  public static CutResult cut(
      AbrasiveTool tool, Substance work, Engagement contact, OperatingPoint point) {
    double able = HardnessRatio.cuttingShare(tool.grainHardnessPa(), work.hardnessPa());
    double d = tool.grainSizeM();
    double spacing = GRAIN_SPACING * d;
    double grains = Math.max(1, contact.areaM2() / (spacing * spacing));
    double height = HEIGHT_SCALE * d * tool.rigidity();
    double soleLoad = 2 * INDENT_FACTOR * work.hardnessPa() * height * height;
    double active = grains * -Math.expm1(-point.loadN() / (grains * soleLoad));
    double grainLoad = active > 0 ? point.loadN() / active : 0;
    double threshold = CrackThreshold.loadN(work);
    double x = grainLoad > 0 ? Math.sqrt(2 * threshold / grainLoad) : 50;
    double cracking = Math.exp(-x) * (x * x / 2 + x + 1);

    double ploughed = liftedShare(work) * point.loadN() * (1 - cracking) / work.hardnessPa();
    double crackedGrainLoad = grainLoad * (x * x / 2 + x + 1);
    double cracked =
        crackedGrainLoad > 0
            ? CRACK_VOLUME
                * CrackThreshold.crackVolumePerLengthM2(work, crackedGrainLoad)
                / crackedGrainLoad
                * point.loadN()
                * cracking
            : 0;
    double sharp =
        able * point.sharpness() * debrisShare(point.coolantMlPerMin()) * tool.rigidity();
    double dry = WHOLE_CONTACT * sharp * point.rimSpeedMPerS() * (ploughed + cracked);
    double clean = ChipLoading.cleanShare(dry, point, contact, work, tool.chipRoomM());
    double tangential = FORCE_RATIO * point.loadN();
    double bite = grainLoad > 0 ? Math.sqrt(grainLoad / (INDENT_FACTOR * work.hardnessPa())) : 0;
    return new CutResult(
        dry * clean,
        tangential,
        tangential * point.rimSpeedMPerS(),
        cracking,
        grainLoad,
        bite,
        clean,
        liftedShare(work));
  }

  /** Share of a groove that leaves as chip. */
  private static double liftedShare(Substance work) {
    double ductility = work.toughnessPaSqrtM() / work.hardnessPa();
    return 0.15 + 0.45 / (1 + ductility / 2e-3);
  }

  /** Debris under the contact: rate rose with flow from 15 to 44 mL/min (DC020; form ours). */
  private static double debrisShare(double coolantMlPerMin) {
    return 0.5 + 0.5 * coolantMlPerMin / (coolantMlPerMin + 15);
  }
}
