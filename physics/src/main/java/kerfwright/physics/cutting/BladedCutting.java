package kerfwright.physics.cutting;

import kerfwright.physics.material.Substance;

/**
 * Removal rate of a bur from the load on each blade.
 *
 * <pre>
 *   Q   = [ n b h u (1 - c) + q a c F V(P_m)/P_m ] v held able clean
 *   n   = z_e phi_s/(2 pi)              blades in contact
 *   z_e = 1 + (z - 1) y/(y + e)         run-out lifts blades off, the load bends them back, y = F/k
 *   h   = 0.6 F/(n b k_c)               k_c of {@link SpecificForce} at h = r_e, k_c1.1 = 1.2 H, m = 0.27
 *   u   = w/(w + 0.5)                   share that lifts a chip instead of ploughing
 *   w   = F/(n b H r_e)                 how wide the edge sinks in, against its own radius r_e/s
 *   c   at P = F t/(n b)                share of the load on points of the edge that crack the work
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
 *   <tr><td>t</td><td>m</td><td>distance of the points on which an edge rests, {@link
 *       CuttingConstants}</td></tr>
 *   <tr><td>c, q, a, V, P_m</td><td>-</td><td>as at {@link AbrasiveCutting}</td></tr>
 *   <tr><td>mu_r</td><td>-</td><td>0.2: force ratio of an edge that only rubs</td></tr>
 *   <tr><td>H, v</td><td>Pa, m/s</td><td>hardness of the work, rim speed</td></tr>
 *   <tr><td>held, able, clean</td><td>-</td><td>{@link RunOut}, {@link HardnessRatio}, {@link
 *       ChipLoading} with 0.3 pi D/z of room in a flute</td></tr>
 * </table>
 *
 * <p>So few blades press each edge deeper against its radius, and cut faster: it follows from the
 * edge radius, not from a table. By hand chips are nanometres to a few micrometres, thinner than
 * the edge is round. Down there the size effect of Kienzle's law is the ploughing of the edge,
 * which u already holds, and would be counted twice: the specific force is held at that of a chip
 * as thick as the edge's radius. Chips come out at tens of nanometres in enamel, as a study of
 * carbide on enamel saw (J Mech Behav Biomed Mater 2019, doi 10.1016/j.jmbbm.2019.103529).
 *
 * <p>Brittle work is never met along a whole edge: it rests on points, which crack it like grains
 * and, being broken edge, do not dull as it does. That is how one carbide took 106 mm3 of glass
 * (DC066). What the work does to the edge stands in EdgeWear.
 *
 * <p>An edge that ploughs without lifting a chip is pushed off more than it is held up: the force
 * ratio falls from that of cutting towards that of sliding (Albrecht P. Trans ASME 1960;82:348-358,
 * from memory). That many blades stay cooler than few was seen (World J Orthod 2006;7:357-360).
 *
 * <p>k_c1.1 = 1.2 H rests on six alloys of handbooks (0.4 to 1.3 H, most of them from memory); m,
 * the ploughing form, 0.6 and mu_r are ours: order of magnitude only. Valid for chips below 0.05 mm
 * and the speeds of {@link RunOut}. Leaves out: helix of the blades, fillers torn out.
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

  /** The cut at one operating point with the usual constants. */
  public static CutResult cut(
      BladedTool tool, Substance work, Engagement contact, OperatingPoint point) {
    return cut(CuttingConstants.TYPICAL, tool, work, contact, point);
  }

  /** The cut at one operating point. */
  public static CutResult cut(
      CuttingConstants constants,
      BladedTool tool,
      Substance work,
      Engagement contact,
      OperatingPoint point) {
    double load = point.loadN();
    double edgeLengthM = edgeLengthM(tool, contact, load);
    double edgeLoadNPerM = load / edgeLengthM;
    double specificForce =
        new SpecificForce(UNIT_FORCE_OVER_HARDNESS * work.hardnessPa(), SIZE_EFFECT)
            .atPa(tool.edgeRadiusM());
    double chip = CUTTING_RATIO * edgeLoadNPerM / specificForce;
    double able = HardnessRatio.cuttingShare(tool.hardnessPa(), work.hardnessPa());
    double lifting = chipShare(tool, work, edgeLoadNPerM, point.sharpness());
    CrackedShare cracked =
        CrackedShare.of(
            work,
            edgeLoadNPerM * constants.edgePointSpacingM(),
            constants.slidingFactor(),
            constants.crackVolume());
    double held =
        RunOut.cuttingShare(
            load,
            point.rimSpeedMPerS(),
            contact.diameterM(),
            tool.runOutM(),
            constants.shakenMassKg());
    double crackedM2 = constants.freshShare() * load * cracked.volumePerLoad();
    double section = edgeLengthM * chip * lifting * (1 - cracked.share()) + crackedM2;
    double free = section * point.rimSpeedMPerS() * held * able;
    double flute = FLUTE_DEPTH * Math.PI * contact.diameterM() / tool.blades();
    double clean = ChipLoading.cleanShare(free, point, contact, work, flute);
    double tangential = load * forceRatio(tool, work, contact, load, point.sharpness());
    return new CutResult(
        free * clean,
        tangential,
        tangential * point.rimSpeedMPerS(),
        cracked.share(),
        edgeLoadNPerM * 1e-3,
        chip,
        clean,
        lifting * able,
        section > 0 ? crackedM2 / section : 0);
  }
}
