package kerfwright.physics.cutting;

import kerfwright.physics.material.Substance;

/**
 * Removal rate of a bur from the load on each blade.
 *
 * <pre>
 *   Q   = n b h v u able clean
 *   n   = z_e phi_s/(2 pi)              blades in contact
 *   z_e = 1 + (z - 1) y/(y + e)         run-out lifts blades off, the load bends them back, y = F/k
 *   h     from mu F/(n b) = k_c(h) h    {@link SpecificForce} with k_c1.1 = 1.2 H, m = 0.27
 *   u   = w/(w + 0.5)                   share that lifts a chip instead of ploughing
 *   w   = F/(n b H r_e)                 how wide the edge sinks in, against its own radius r_e/s
 * </pre>
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>Q</td><td>m3/s</td><td>removal rate</td></tr>
 *   <tr><td>F, mu</td><td>N, -</td><td>load of the hand; force along the rim over load, 0.6</td></tr>
 *   <tr><td>z, z_e</td><td>-</td><td>blades, blades that cut</td></tr>
 *   <tr><td>e, y, k</td><td>m, m, N/m</td><td>run-out, deflection, stiffness at the head</td></tr>
 *   <tr><td>b, h</td><td>m</td><td>length of edge in the work, thickness of the chip</td></tr>
 *   <tr><td>phi_s</td><td>rad</td><td>engagement angle, see {@link ChipGeometry}</td></tr>
 *   <tr><td>r_e, s</td><td>m, -</td><td>edge radius when new, sharpness: a blunt edge is rounder</td></tr>
 *   <tr><td>H, v</td><td>Pa, m/s</td><td>hardness of the work, rim speed</td></tr>
 *   <tr><td>able, clean</td><td>-</td><td>{@link HardnessRatio}, {@link ChipLoading} with
 *       0.3 pi D/z of room in a flute</td></tr>
 * </table>
 *
 * <p>So few blades make a thick chip at a lower specific force, and cut faster: it follows from the
 * size effect and the edge radius, not from a table. k_c1.1 = 1.2 H rests on six alloys of
 * handbooks (0.4 to 1.3 H, most of them from memory); m and the ploughing form are ours: order of
 * magnitude only. Chips come out at nanometres in enamel, as a study of carbide on enamel saw (J
 * Mech Behav Biomed Mater 2019, doi 10.1016/j.jmbbm.2019.103529): that is far below the chips the
 * law of Kienzle was fitted for. Leaves out: fracture by blades, helix of the blades.
 */
public final class BladedCutting {
  private static final double FORCE_RATIO = 0.6;
  private static final double UNIT_FORCE_OVER_HARDNESS = 1.2;
  private static final double SIZE_EFFECT = 0.27;
  private static final double FLUTE_DEPTH = 0.3;
  private static final double PLOUGHING_HALF = 0.5;

  private BladedCutting() {}

  /** Ratio of force along the rim to load. */
  public static double forceRatio() {
    return FORCE_RATIO;
  }

  /** Blades that cut, between one and all, from run-out against deflection under the load. */
  public static double cuttingBlades(BladedTool tool, double loadN) {
    double deflection = loadN / tool.stiffnessNPerM();
    double sum = deflection + tool.runOutM();
    return sum > 0 ? 1 + (tool.blades() - 1) * deflection / sum : tool.blades();
  }

  /** The cut at one operating point. */
  public static CutResult cut(
      BladedTool tool, Substance work, Engagement contact, OperatingPoint point) {
    double edges = cuttingBlades(tool, point.loadN()) * contact.arcShare();
    double edgeLengthM = edges * contact.engagedLengthM() * tool.edgeShare();
    double tangential = FORCE_RATIO * point.loadN();
    SpecificForce law =
        new SpecificForce(UNIT_FORCE_OVER_HARDNESS * work.hardnessPa(), SIZE_EFFECT);
    double chip = point.loadN() > 0 ? law.chipThicknessM(tangential / edgeLengthM) : 0;
    double edgeLoadNPerM = point.loadN() / edgeLengthM;
    double radius = tool.edgeRadiusM() / point.sharpness();
    double sunk = edgeLoadNPerM / (work.hardnessPa() * radius);
    double chipShare =
        sunk
            / (sunk + PLOUGHING_HALF)
            * HardnessRatio.cuttingShare(tool.hardnessPa(), work.hardnessPa());
    double free = edgeLengthM * chip * point.rimSpeedMPerS() * chipShare;
    double flute = FLUTE_DEPTH * Math.PI * contact.diameterM() / tool.blades();
    double clean = ChipLoading.cleanShare(free, point, contact, work, flute);
    double removal = free * clean;
    return new CutResult(
        removal,
        tangential,
        tangential * point.rimSpeedMPerS(),
        0,
        edgeLoadNPerM * 1e-3,
        chip,
        clean,
        chipShare);
  }
}
