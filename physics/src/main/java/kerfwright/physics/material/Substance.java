package kerfwright.physics.material;

/**
 * What the models need to know of the material of one layer. All values SI.
 *
 * @param hardnessPa indentation hardness H of the bulk
 * @param youngPa Young's modulus E
 * @param toughnessPaSqrtM fracture toughness K_c of long cracks
 * @param shortCrackToughnessPaSqrtM K_0, the same for a crack as short as one grain's, 5 to 50
 *     micrometres; equal to K_c where toughness does not grow with the crack or nothing is known
 * @param densityKgPerM3 density
 * @param conductivityWPerMK thermal conductivity
 * @param specificHeatJPerKgK specific heat
 * @param hardPhaseHardnessPa hardness of the hardest phase in it (fillers, carbides); equal to
 *     hardnessPa where it is one phase
 * @param hardPhaseShare volume share of that phase, 0 to 1
 */
public record Substance(
    double hardnessPa,
    double youngPa,
    double toughnessPaSqrtM,
    double shortCrackToughnessPaSqrtM,
    double densityKgPerM3,
    double conductivityWPerMK,
    double specificHeatJPerKgK,
    double hardPhaseHardnessPa,
    double hardPhaseShare) {
  public Substance {
    positive("hardness", hardnessPa);
    positive("Young's modulus", youngPa);
    positive("fracture toughness", toughnessPaSqrtM);
    positive("toughness of short cracks", shortCrackToughnessPaSqrtM);
    positive("density", densityKgPerM3);
    positive("thermal conductivity", conductivityWPerMK);
    positive("specific heat", specificHeatJPerKgK);
    if (!(hardPhaseHardnessPa >= hardnessPa) || Double.isInfinite(hardPhaseHardnessPa)) {
      throw new IllegalArgumentException(
          "hardest phase must be at least as hard as the bulk, got " + hardPhaseHardnessPa);
    }
    if (!(hardPhaseShare >= 0 && hardPhaseShare <= 1)) {
      throw new IllegalArgumentException("share must be 0 to 1, got " + hardPhaseShare);
    }
  }

  /** A material whose toughness is the same for cracks of any length. */
  public Substance(
      double hardnessPa,
      double youngPa,
      double toughnessPaSqrtM,
      double densityKgPerM3,
      double conductivityWPerMK,
      double specificHeatJPerKgK,
      double hardPhaseHardnessPa,
      double hardPhaseShare) {
    this(
        hardnessPa,
        youngPa,
        toughnessPaSqrtM,
        toughnessPaSqrtM,
        densityKgPerM3,
        conductivityWPerMK,
        specificHeatJPerKgK,
        hardPhaseHardnessPa,
        hardPhaseShare);
  }

  private static void positive(String what, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + " must be above zero and finite, got " + value);
    }
  }

  /** Heat needed to warm a volume: rho c, J/(m3 K). */
  public double volumetricHeatJPerM3K() {
    return densityKgPerM3 * specificHeatJPerKgK;
  }

  /** How fast warmth spreads: alpha = k / (rho c), m2/s. */
  public double diffusivityM2PerS() {
    return conductivityWPerMK / volumetricHeatJPerM3K();
  }

  /** Lawn and Marshall's brittleness H / K_c, 1/sqrt(m) (J Am Ceram Soc 1979;62:347-350). */
  public double brittlenessPerSqrtM() {
    return hardnessPa / toughnessPaSqrtM;
  }

  /** Quinn's brittleness H E / K_c^2, 1/m (J Mater Sci 1997;32:4331-4346). */
  public double brittlenessPerM() {
    return hardnessPa * youngPa / (toughnessPaSqrtM * toughnessPaSqrtM);
  }

  /**
   * Depth of cut above which a brittle material cracks instead of flowing: 0.15 (E/H) (K_c/H)^2, m.
   * Bifano TG, Dow TA, Scattergood RO. J Eng Ind 1991;113:184-189; the constant 0.15 from memory.
   */
  public double criticalDepthM() {
    double toughnessOverHardness = toughnessPaSqrtM / hardnessPa;
    return 0.15 * (youngPa / hardnessPa) * toughnessOverHardness * toughnessOverHardness;
  }
}
