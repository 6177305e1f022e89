package kerfwright.planner.heat;

/**
 * The hole in a root or crown from whose wall heat goes outward.
 *
 * @param radiusMm radius of the hole
 * @param heatedMm how much of its length the instrument heats
 * @param confined whether the instrument turns in its own hole, so that its heat has nowhere else
 *     to go
 */
public record Bore(double radiusMm, double heatedMm, boolean confined) {
  public Bore {
    if (!(radiusMm > 0 && heatedMm > 0)) {
      throw new IllegalArgumentException(
          "Bore needs a radius and a length above 0 mm, got " + radiusMm + " and " + heatedMm);
    }
  }

  /** A drill in a canal or along a post. */
  public static Bore canal(double diameterMm, double lengthMm) {
    return new Bore(diameterMm / 2, lengthMm, true);
  }

  /**
   * A pulp chamber of an outline, heated so far down its wall by an instrument that moves in it.
   */
  public static Bore chamber(double areaMm2, double depthMm) {
    return new Bore(Math.sqrt(areaMm2 / Math.PI), depthMm, false);
  }

  double wallM2() {
    return 2 * Math.PI * radiusMm * heatedMm * 1e-6;
  }
}
