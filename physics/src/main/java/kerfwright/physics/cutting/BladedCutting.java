package kerfwright.physics.cutting;

import kerfwright.physics.material.Substance;

/**
 * Removal rate of a bur from the load on each blade.
 *
 * <pre>
 *   Q   = n b h v u able clean
 *   n   = z_e phi_s/(2 pi)              blades in contact
 *   z_e = 1 + (z - 1) y/(y + e)         run-out lifts blades off, the load bends them back, y = F/k
 *   h     from 0.6 F/(n b) = k_c(h) h   {@link SpecificForce} with k_c1.1 = 1.2 H, m = 0.27
 *   u   = w/(w + 0.5)                   share that lifts a chip instead of ploughing
 *   w   = F/(n b H r_e)                 how wide the edge sinks in, against its own radius r_e/s
 *   F_t = F [ mu_r + (0.6 - mu_r) u ]   force along the rim
 * </pre>
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>Q</td><td>m3/s</td><td>removal rate</td></tr>
 *   <tr><td>F, F_t</td><td>N</td><td>load of the hand, force along the rim</td></tr>
 *   <tr><td>z, z_e</td><td>-</td><td>blades, blades that cut</td></tr>
 *   <tr><td>e, y, k</td><td>m, m, N/m</td><td>run-out, deflection, stiffness at the head</td></tr>
 *   <tr><td>b, h</td><td>m</td><td>length of edge in the work, thickness of the chip</td></tr>
 *   <tr><td>phi_s</td><td>rad</td><td>engagement angle, see {@link ChipGeometry}</td></tr>
 *   <tr><td>r_e, s</td><td>m, -</td><td>edge radius when new, sharpness: a blunt edge is rounder</td></tr>
 *   <tr><td>mu_r</td><td>-</td><td>0.2: force ratio of an edge that only rubs</td></tr>
 *   <tr><td>H, v</td><td>Pa, m/s</td><td>hardness of the work, rim speed</td></tr>
 *   <tr><td>able, clean</td><td>-</td><td>{@link HardnessRatio}, {@link ChipLoading} with
 *       0.3 pi D/z of room in a flute</td></tr>
 * </table>
 *
 * <p>So few blades make a thick chip at a lower specific force, and cut faster: it follows from the
 * size effect and the edge radius, not from a table. Chips come out at nanometres in enamel, as a
 * study of carbide on enamel saw (J Mech Behav Biomed Mater 2019, doi 10.1016/j.jmbbm.2019.103529):
 * that is far below the chips the law of Kienzle was fitted for.
 *
 * <p>An edge that ploughs without lifting a chip is pushed off more than it is held up: the force
 * ratio falls from that of cutting towards that of sliding (Albrecht P. Trans ASME 1960;82:348-358,
 * from memory). That many blades stay cooler than few was seen (World J Orthod 2006;7:357-360).
 *
 * <p>k_c1.1 = 1.2 H rests on six alloys of handbooks (0.4 to 1.3 H, most of them from memory); m,
 * the ploughing form, 0.6 and mu_r are ours: order of magnitude only. Leaves out: fracture by
 * blades and of blades (docs/models.md says what came of trying), helix of the blades.
 */
public final class BladedCutting {
  private static final double CUTTING_RATIO = 0.6;
  private static final double RUBBING_RATIO = 0.2;
  private static final double UNIT_FORCE_OVER_HARDNESS = 1.2;
  private static final double SIZE_EFFECT = 0.27;
  private static final double FLUTE_DEPTH = 0.3;
  private static final double PLOUGHING_HALF = 0.5;

  private BladedCutting() {}

  /** Greatest ratio of force along the rim to load: all of the edge lifts chips. */
  public static double greatestForceRatio() {
    return CUTTING_RATIO;
  }

  /** Ratio of force along the rim to load of an edge that only rubs. */
  public static double rubbingRatio() {
    return RUBBING_RATIO;
  }

  /** Ratio of force along the rim to load at an operating point; it does not depend on speed. */
  public static double forceRatio(
      BladedTool tool, Substance work, Engagement contact, double loadN, double sharpness) {
    double lifting =
        loadN > 0 ? chipShare(tool, work, loadN / edgeLengthM(tool, contact, loadN), sharpness) : 0;
    return RUBBING_RATIO + (CUTTING_RATIO - RUBBING_RATIO) * lifting;
  }

  /** Blades that cut, between one and all, from run-out against deflection under the load. */
  public static double cuttingBlades(BladedTool tool, double loadN) {
    double deflection = loadN / tool.stiffnessNPerM();
    double sum = deflection + tool.runOutM();
    return sum > 0 ? 1 + (tool.blades() - 1) * deflection / sum : tool.blades();
  }

  private static double edgeLengthM(BladedTool tool, Engagement contact, double loadN) {
    return cuttingBlades(tool, loadN)
        * contact.arcShare()
        * contact.engagedLengthM()
        * tool.edgeShare();
  }

  /** Share of the edge's work that lifts a chip. */
  private static double chipShare(
      BladedTool tool, Substance work, double edgeLoadNPerM, double sharpness) {
    double sunk = edgeLoadNPerM * sharpness / (work.hardnessPa() * tool.edgeRadiusM());
    return sunk / (sunk + PLOUGHING_HALF);
  }

  /** The cut at one operating point. */
  public static CutResult cut(
      BladedTool tool, Substance work, Engagement contact, OperatingPoint point) {
    double load = point.loadN();
    double edgeLengthM = edgeLengthM(tool, contact, load);
    double edgeLoadNPerM = load / edgeLengthM;
    SpecificForce law =
        new SpecificForce(UNIT_FORCE_OVER_HARDNESS * work.hardnessPa(), SIZE_EFFECT);
    double chip = load > 0 ? law.chipThicknessM(CUTTING_RATIO * edgeLoadNPerM) : 0;
    double able = HardnessRatio.cuttingShare(tool.hardnessPa(), work.hardnessPa());
    double lifting = chipShare(tool, work, edgeLoadNPerM, point.sharpness());
    double free = edgeLengthM * chip * point.rimSpeedMPerS() * lifting * able;
    double flute = FLUTE_DEPTH * Math.PI * contact.diameterM() / tool.blades();
    double clean = ChipLoading.cleanShare(free, point, contact, work, flute);
    double tangential = load * forceRatio(tool, work, contact, load, point.sharpness());
    return new CutResult(
        free * clean,
        tangential,
        tangential * point.rimSpeedMPerS(),
        0,
        edgeLoadNPerM * 1e-3,
        chip,
        clean,
        lifting * able);
  }
}
