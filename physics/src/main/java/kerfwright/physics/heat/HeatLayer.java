package kerfwright.physics.heat;

import kerfwright.physics.material.Substance;
import kerfwright.quantity.Check;

/**
 * One layer of the body, in perfect contact with the next.
 *
 * @param thicknessMm thickness
 * @param conductivityWPerMK thermal conductivity k
 * @param densityKgPerM3 density rho
 * @param specificHeatJPerKgK specific heat c
 */
public record HeatLayer(
    double thicknessMm,
    double conductivityWPerMK,
    double densityKgPerM3,
    double specificHeatJPerKgK) {
  public HeatLayer {
    Check.positive("Layer thickness", "mm", thicknessMm);
    Check.positive("Thermal conductivity", "W/(m K)", conductivityWPerMK);
    Check.positive("Density", "kg/m3", densityKgPerM3);
    Check.positive("Specific heat", "J/(kg K)", specificHeatJPerKgK);
  }

  /** A layer of a known material. */
  public static HeatLayer of(double thicknessMm, Substance material) {
    return new HeatLayer(
        thicknessMm,
        material.conductivityWPerMK(),
        material.densityKgPerM3(),
        material.specificHeatJPerKgK());
  }

  /** Heat needed to warm a volume: rho c, J/(m3 K). */
  public double volumetricHeatJPerM3K() {
    return densityKgPerM3 * specificHeatJPerKgK;
  }

  /** How fast warmth spreads: k / (rho c), m2/s. */
  public double diffusivityM2PerS() {
    return conductivityWPerMK / volumetricHeatJPerM3K();
  }
}
