package kerfwright.physics.cutting;

/**
 * What the wall does to the hand in a side cut: pushes the handpiece back or pulls it on.
 *
 * <p>The instrument turns clockwise seen from the shank. Looking from shank to tip along the
 * travel, work on the left meets blades that move the way the instrument travels (against rotation:
 * the chip starts at nothing, the force along the rim pushes back); work on the right meets blades
 * that move against the travel (with rotation: the chip starts at its thickest, the force pulls
 * on): F_x = -F_t cos(phi_s/2) against rotation, +F_t cos(phi_s/2) with it.
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>F_x</td><td>N</td><td>force on the hand along the travel, forwards positive</td></tr>
 *   <tr><td>F_t, F</td><td>N</td><td>force along the rim, force at right angles to it</td></tr>
 *   <tr><td>phi_s</td><td>rad</td><td>engagement angle: the contact lies on average half of it ahead of the finished wall</td></tr>
 * </table>
 *
 * <p>Valid for a cut on one side; in a full slot the two halves cancel. Leaves out the force at
 * right angles to the rim, which pushes back by F sin(phi_s/2) in both cases and stays small for
 * shallow cuts. Geometry after any milling handbook; worked out in Song XF et al. J Manuf Sci Eng
 * 2013;135:011014 for dental ceramics.
 */
public final class StrokeForces {
  /** Which side of the travel the work is on, seen from shank to tip. */
  public enum WorkSide {
    LEFT,
    RIGHT
  }

  /** Which way the tooth is gone round, seen from the shank. */
  public enum Round {
    CLOCKWISE,
    COUNTER_CLOCKWISE
  }

  private StrokeForces() {}

  /** The side the work is on when going round inside an opening or outside a crown. */
  public static WorkSide side(Round round, boolean insideAnOpening) {
    boolean left = insideAnOpening == (round == Round.CLOCKWISE);
    return left ? WorkSide.LEFT : WorkSide.RIGHT;
  }

  /** True where this is a cut against rotation. */
  public static boolean againstRotation(WorkSide side) {
    return side == WorkSide.LEFT;
  }

  /**
   * Force along the travel on the handpiece, N: positive pulls it on, negative pushes it back. The
   * force along the rim acts at the contact, half the engagement angle off the travel.
   */
  public static double alongTravelN(WorkSide side, double tangentialN, Engagement contact) {
    double half = ChipGeometry.engagementAngleRad(contact.depthOfCutM(), contact.diameterM()) / 2;
    double along = tangentialN * Math.cos(half);
    return againstRotation(side) ? -along : along;
  }
}
