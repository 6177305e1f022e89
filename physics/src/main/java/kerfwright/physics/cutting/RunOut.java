package kerfwright.physics.cutting;

/**
 * What run-out leaves of the cut: a head that turns off its axis is thrown by m_e e w^2 once a turn
 * and meets the work only for part of it, share = F / (F + m_e e w^2).
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>F</td><td>N</td><td>load of the hand</td></tr>
 *   <tr><td>e</td><td>m</td><td>run-out of the head</td></tr>
 *   <tr><td>w</td><td>rad/s</td><td>angular speed, rim speed over radius</td></tr>
 *   <tr><td>m_e</td><td>kg</td><td>mass shaken, see {@link CuttingConstants}</td></tr>
 * </table>
 *
 * <p>At a given load the rate of a working part goes with v share: in proportion to speed while the
 * load holds the head down, falling as 1/w once it does not, greatest at w* = sqrt(F/(m_e e)): a
 * heavier hand and a truer head bear more speed. A carbide fissure bur cut an enamel substitute
 * best at 200 000 1/min (DC025); with a run-out of 3.5 against 6 micrometres a diamond instrument
 * took twice as much (DC034, DC035).
 *
 * <p>A scaling argument without a source. The mean of the contact force over a turn is still F, so
 * that the rate can fall only because the peaks cut less well than they rest: the bond and what
 * lies between the grains bear them. For the same reason force along the rim and heat are
 * <em>not</em> lowered. Valid for a load of the hand, 40 000 to 400 000 1/min and heads of 0.8 to
 * 1.6 mm; not for a set feed. Leaves out: resonance of shaft and hand, play of the bearing.
 */
public final class RunOut {
  private RunOut() {}

  /** Share of the turn in which the work is cut: 1 at rest, towards 0 with speed. */
  public static double cuttingShare(
      double loadN, double rimSpeedMPerS, double diameterM, double runOutM, double shakenMassKg) {
    double turning = 2 * rimSpeedMPerS / diameterM;
    double thrown = shakenMassKg * runOutM * turning * turning;
    return loadN > 0 ? loadN / (loadN + thrown) : 0;
  }

  /** Rim speed of the greatest rate at a load, m/s; infinite without run-out. */
  public static double bestRimSpeedMPerS(
      double loadN, double diameterM, double runOutM, double shakenMassKg) {
    return diameterM / 2 * Math.sqrt(loadN / (shakenMassKg * runOutM));
  }
}
