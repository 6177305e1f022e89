package kerfwright.physics.cutting;

import kerfwright.physics.material.Substance;

/**
 * Removal rate of a bur from the load on each blade.
 *
 * <p>Blades in contact: n = z_e phi_s/(2 pi). Run-out lifts some blades off; the load bends the
 * shank by y = F/stiffness and brings them back, z_e = 1 + (z - 1) y/(y + e). The force along the
 * rim F_t = mu F is shared by n blades of engaged length b; {@link SpecificForce} gives the chip h
 * it lifts, with k_c1.1 = 1.2 H and m = 0.27. A blunt edge ploughs before it cuts: with w = (F/(n
 * b)) / (H r_e), how wide the edge sinks in against its own radius, the share that lifts chips is
 * w/(w + 0.2). Rate = n b h v times that share, times {@link HardnessRatio}.
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>z, z_e</td><td>-</td><td>blades, blades that cut</td></tr>
 *   <tr><td>e, y</td><td>m</td><td>run-out, deflection under the load</td></tr>
 *   <tr><td>r_e</td><td>m</td><td>edge radius, grows as the edge blunts</td></tr>
 *   <tr><td>mu</td><td>-</td><td>force along the rim over load, 0.6</td></tr>
 *   <tr><td>v</td><td>m/s</td><td>rim speed</td></tr>
 * </table>
 *
 * <p>So few blades make a thick chip at a lower specific force, and cut faster: it follows from the
 * size effect and the edge radius, not from a table. k_c1.1 = 1.2 H rests on six alloys of
 * handbooks (0.4 to 1.3 H, most of them from memory); m and the ploughing form are ours: order of
 * magnitude only. Chips come out at nanometres, as a study of carbide on enamel saw (J Mech Behav
 * Biomed Mater 2019, doi 10.1016/j.jmbbm.2019.103529). Leaves out: fracture by blades, chip packing
 * in the flutes.
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
