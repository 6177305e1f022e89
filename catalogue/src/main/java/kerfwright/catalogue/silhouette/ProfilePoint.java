package kerfwright.catalogue.silhouette;

/**
 * One point of a profile.
 *
 * @param zMm distance from the tip along the axis
 * @param rMm distance from the axis
 */
public record ProfilePoint(double zMm, double rMm) {
  public ProfilePoint {
    if (!(zMm >= 0 && rMm >= 0 && Double.isFinite(zMm) && Double.isFinite(rMm))) {
      throw new IllegalArgumentException(
          "A profile point lies at or right of the tip and off the axis, got z "
              + zMm
              + " mm, r "
              + rMm
              + " mm");
    }
  }
}
