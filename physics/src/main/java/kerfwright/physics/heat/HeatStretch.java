package kerfwright.physics.heat;

import kerfwright.quantity.Check;

/**
 * A stretch of work during which nothing is changed: strokes of onS with the instrument cutting,
 * pauses of offS without it, beginning with a stroke.
 *
 * @param durationS how long the stretch lasts; the last stroke or pause is cut short
 * @param fluxWPerM2 heat into the floor of the spot while cutting
 * @param onS length of a stroke; zero when nothing is cut at all
 * @param offS length of a pause; zero for continuous cutting
 * @param spotWhileOn coolant that reaches the floor while cutting, beside the flux
 * @param spotWhileOff coolant on the floor during pauses
 * @param outside coolant on the top outside the spot and on the wall of the cavity, always
 * @param feedMmPerS speed at which the floor goes down while cutting
 */
public record HeatStretch(
    double durationS,
    double fluxWPerM2,
    double onS,
    double offS,
    Coolant spotWhileOn,
    Coolant spotWhileOff,
    Coolant outside,
    double feedMmPerS) {
  public HeatStretch {
    Check.positive("Duration of a stretch", "s", durationS);
    Check.finite("Heat flux", "W/m2", fluxWPerM2);
    Check.notNegative("Length of a stroke", "s", onS);
    Check.notNegative("Length of a pause", "s", offS);
    Check.notNegative("Feed", "mm/s", feedMmPerS);
    if (onS + offS <= 0) {
      throw new IllegalArgumentException("A stretch needs a stroke or a pause above zero seconds");
    }
    if (durationS / (onS + offS) > 100_000) {
      throw new IllegalArgumentException(
          "A stretch may have at most 100000 strokes, got "
              + durationS
              + " s of strokes and pauses of "
              + (onS + offS)
              + " s");
    }
  }

  /** Cutting in strokes under one coolant that reaches the floor in the pauses only. */
  public static HeatStretch strokes(
      double durationS,
      double fluxWPerM2,
      double onS,
      double offS,
      Coolant coolant,
      double feedMmPerS) {
    return new HeatStretch(
        durationS, fluxWPerM2, onS, offS, Coolant.NONE, coolant, coolant, feedMmPerS);
  }

  /** A pause: nothing is cut, the coolant reaches everything. */
  public static HeatStretch pause(double durationS, Coolant coolant) {
    return new HeatStretch(durationS, 0, 0, durationS, coolant, coolant, coolant, 0);
  }

  /** How long the instrument cuts within the stretch. */
  public double cuttingS() {
    if (onS == 0) {
      return 0;
    }
    double period = onS + offS;
    double whole = Math.floor(durationS / period + 1e-12);
    return whole * onS + Math.min(onS, Math.max(0, durationS - whole * period));
  }

  /** How far the floor goes down within the stretch. */
  public double cutDepthMm() {
    return feedMmPerS * cuttingS();
  }
}
