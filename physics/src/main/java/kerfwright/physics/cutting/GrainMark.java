package kerfwright.physics.cutting;

import kerfwright.physics.material.Substance;

/**
 * What one sharp grain leaves when it is pressed in by a load and drawn along.
 *
 * <pre>
 *   y     = sqrt(P/(c0 H))              depth, as in {@link AbrasiveCutting}
 *   theta = arctan sqrt(c0/pi)          half-angle of the cone whose load is H times its area
 *   A     = y^2 tan(theta)              section of the groove
 *   A_c   = a V(P) for P above P_c      section that lateral cracks take away, else nothing
 * </pre>
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>P, P_c</td><td>N</td><td>load on the grain, threshold of {@link CrackThreshold}</td></tr>
 *   <tr><td>H</td><td>Pa</td><td>hardness of the work</td></tr>
 *   <tr><td>c0, a, V</td><td>-</td><td>as at {@link AbrasiveCutting}</td></tr>
 * </table>
 *
 * <p>One grain at one load; in a cut the loads are spread, which {@link AbrasiveCutting} takes into
 * account. Leaves out: rounding of the tip, springing back.
 *
 * @param loadN load on the grain
 * @param depthM depth it sinks in
 * @param grooveM2 section of the groove
 * @param chipShare share of the groove that leaves as chip, the rest is pushed to the sides
 * @param cracks true above the threshold
 * @param crackDepthM depth at which lateral cracks run, 0 where nothing cracks
 * @param crackedM2 section that cracks take away, 0 where nothing cracks
 */
public record GrainMark(
    double loadN,
    double depthM,
    double grooveM2,
    double chipShare,
    boolean cracks,
    double crackDepthM,
    double crackedM2) {
  /** Half-angle of the tip, rad: the cone that the law of load and depth means. */
  public static double tipHalfAngleRad() {
    return Math.atan(Math.sqrt(AbrasiveCutting.INDENT_FACTOR / Math.PI));
  }

  /** The mark of a grain under a load, with the usual constants. */
  public static GrainMark of(Substance work, double loadN) {
    double depth = AbrasiveCutting.biteM(loadN, work.hardnessPa());
    boolean cracks = loadN > CrackThreshold.loadN(work);
    double volume =
        CuttingConstants.TYPICAL.crackVolume() * CrackThreshold.crackVolumePerLengthM2(work, loadN);
    return new GrainMark(
        loadN,
        depth,
        depth * depth * Math.tan(tipHalfAngleRad()),
        AbrasiveCutting.liftedShare(work),
        cracks,
        cracks ? CrackThreshold.lateralDepthM(work, loadN) : 0,
        cracks ? volume : 0);
  }
}
