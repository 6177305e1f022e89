package kerfwright.catalogue.silhouette;

import kerfwright.catalogue.Remark;

/**
 * What neither the ISO 6360 number nor the size tells and a drawing still needs. All are project
 * settings with no source; none feeds a computed limit.
 *
 * @param neckOfHead neck diameter over head diameter, before {@code neckPlusMm} is added
 * @param neckPlusMm added to it
 * @param neckAtLeastMm the neck is never thinner, unless the head is
 * @param neckOfShank the neck is never thicker than this share of the shank
 * @param taperHalfAngleDeg angle between axis and side of a tapered head with a blunt end
 * @param tipAtLeastOfHead a tapered blunt end is never narrower than this share of the head
 * @param neckConeHalfAngleDeg angle between axis and the cone that joins neck and shank
 */
public record SilhouetteSettings(
    double neckOfHead,
    double neckPlusMm,
    double neckAtLeastMm,
    double neckOfShank,
    double taperHalfAngleDeg,
    double tipAtLeastOfHead,
    double neckConeHalfAngleDeg) {
  public static final SilhouetteSettings PROJECT =
      new SilhouetteSettings(0.75, 0.05, 0.45, 0.9, 2.5, 0.45, 15);

  public SilhouetteSettings {
    share("neckOfHead", neckOfHead);
    share("neckOfShank", neckOfShank);
    share("tipAtLeastOfHead", tipAtLeastOfHead);
    angle("taperHalfAngleDeg", taperHalfAngleDeg);
    angle("neckConeHalfAngleDeg", neckConeHalfAngleDeg);
  }

  /** Assumed diameter of the neck; always a little thinner than the head. */
  public double neckDiameterMm(double headMm, double shankMm) {
    double wanted = Math.min(neckOfHead * headMm + neckPlusMm, neckOfShank * shankMm);
    return Math.min(Math.max(neckAtLeastMm, wanted), 0.9 * headMm);
  }

  /** What is assumed of the neck. */
  Remark neckRule() {
    return Remark.of("neck-rule", neckOfHead, neckPlusMm, neckOfShank);
  }

  private static void share(String name, double value) {
    if (!(value > 0 && value < 1)) {
      throw new IllegalArgumentException(name + " must lie between 0 and 1, got " + value);
    }
  }

  private static void angle(String name, double value) {
    if (!(value > 0 && value < 60)) {
      throw new IllegalArgumentException(name + " must lie between 0 and 60 degrees, got " + value);
    }
  }
}
