package kerfwright.physics.wear;

import kerfwright.physics.material.Substance;

/**
 * How fast an abrasive working part loses its cut: share of its life used by a volume.
 *
 * <p>w = w1 (H/H1)^3 (v/v1) (d1/d) / r: harder work blunts and pulls out grains faster, finer
 * grains have less to lose; r is how many layers of grain the bond holds in reserve (1
 * electroplated, 6 sintered; common practice, no source).
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>w</td><td>1/m3</td><td>lives used for a volume; how the cut falls with them stands in {@link
 *       GrainDulling}</td></tr>
 *   <tr><td>H</td><td>Pa</td><td>hardness of the work; H1 = 3.5 GPa, enamel</td></tr>
 *   <tr><td>d</td><td>m</td><td>grain size; d1 = 115 micrometres, medium</td></tr>
 *   <tr><td>v</td><td>m/s</td><td>rim speed; v1 = 15 m/s. Linear in speed is a project setting: at twice
 *       the speed zirconia was cut hotter (Turp L et al. 2024)</td></tr>
 *   <tr><td>w1</td><td>1/m3</td><td>one life for 600 mm3 of enamel by medium grit: about five crown
 *       preparations, after which replacement is advised (Emir F, Ayyildiz S, Sahin C. J Adv
 *       Prosthodont 2018;10:93-100; the volume of a preparation is our estimate). The power
 *       of H puts a life in zirconia near 13 mm3 at 12.5 m/s, about the nine-minute cut after which a
 *       second one removed significantly less (UAB thesis, 150 000 rpm, 0.98 N)</td></tr>
 * </table>
 *
 * <p>Order of magnitude only, for rigid bonds. Leaves out: grains torn out by a blow, clogging, the
 * load. What steam sterilising takes stands in {@link Sharpness}.
 */
public final class GrainWear {
  private static final double REFERENCE_HARDNESS_PA = 3.5e9;
  private static final double REFERENCE_GRAIN_M = 115e-6;
  private static final double REFERENCE_SPEED_M_PER_S = 15;
  private static final double REFERENCE_LIFE_M3 = 600e-9;

  private GrainWear() {}

  /** Lives used for a volume, 1/m3. */
  public static double livesPerM3(
      Substance work, double grainSizeM, double reserveLayers, double rimSpeedMPerS) {
    double hardness = work.hardnessPa() / REFERENCE_HARDNESS_PA;
    return hardness
        * hardness
        * hardness
        * (rimSpeedMPerS / REFERENCE_SPEED_M_PER_S)
        * (REFERENCE_GRAIN_M / grainSizeM)
        / (REFERENCE_LIFE_M3 * reserveLayers);
  }
}
