package kerfwright.physics.cutting;

import kerfwright.physics.material.Substance;

/**
 * Share of the load on points above the crack threshold, and what their cracks lift, for points
 * whose depths are spread exponentially; equations at {@link AbrasiveCutting}.
 *
 * @param share c, share of the load on points that crack the work
 * @param volumePerLoad volume of cracks that comes away for a length of travel and the whole load,
 *     a c V(P_m)/P_m, 1/Pa
 */
record CrackedShare(double share, double volumePerLoad) {
  private static final double NEVER = 50;

  static CrackedShare of(
      Substance work, double pointLoadN, double slidingFactor, double crackVolume) {
    double threshold = CrackThreshold.loadN(work, slidingFactor);
    double x = pointLoadN > 0 ? Math.min(NEVER, Math.sqrt(2 * threshold / pointLoadN)) : NEVER;
    double above = x * x / 2 + x + 1;
    double share = Math.exp(-x) * above;
    double cracking = pointLoadN * above;
    double volume =
        cracking > 0
            ? crackVolume * share * CrackThreshold.crackVolumePerLengthM2(work, cracking) / cracking
            : 0;
    return new CrackedShare(share, volume);
  }
}
