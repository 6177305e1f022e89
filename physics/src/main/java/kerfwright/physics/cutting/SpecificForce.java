package kerfwright.physics.cutting;

import kerfwright.quantity.Check;

/**
 * Force needed to lift a chip: the law of Kienzle, k_c = k_c1.1 h^-m, F = k_c b h.
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>k_c1.1</td><td>Pa</td><td>specific force at a chip 1 mm thick and 1 mm wide</td></tr>
 *   <tr><td>m</td><td>-</td><td>how fast it rises as the chip gets thinner (size effect)</td></tr>
 *   <tr><td>h</td><td>mm</td><td>chip thickness; the law is written in millimetres</td></tr>
 * </table>
 *
 * <p>Fitted by its author for chips of about 0.05 to 2.5 mm. Below 1 micrometre it is carried on
 * over two to three decades: order of magnitude only. Source: Kienzle O. VDI-Z 1952;94:299-305
 * (from memory), definition read in a toolmaker's public page.
 *
 * @param unitForcePa k_c1.1
 * @param exponent m
 */
public record SpecificForce(double unitForcePa, double exponent) {
  public SpecificForce {
    Check.positive("Unit cutting force k_c1.1", "Pa", unitForcePa);
    if (!(exponent >= 0 && exponent < 1)) {
      throw new IllegalArgumentException(
          "Exponent of the size effect must be from 0 to below 1, got " + exponent);
    }
  }

  /** Specific force at a chip thickness, Pa; numerically also the energy for a volume, J/m3. */
  public double atPa(double chipThicknessM) {
    return unitForcePa * Math.pow(chipThicknessM * 1e3, -exponent);
  }

  /** Force on an edge, N. */
  public double edgeForceN(double chipThicknessM, double widthM) {
    // one power instead of k_c times h, which would be infinity times zero for no chip
    return unitForcePa * 1e-3 * Math.pow(chipThicknessM * 1e3, 1 - exponent) * widthM;
  }

  /** Thickness of the chip that a force along the cut can lift, m: the law solved for h. */
  public double chipThicknessM(double forcePerWidthNPerM) {
    // F/b = k (h/mm)^-m h  =>  h/mm = (F/b / (k * 1 mm))^(1/(1-m))
    return 1e-3 * Math.pow(forcePerWidthNPerM / (unitForcePa * 1e-3), 1 / (1 - exponent));
  }
}
