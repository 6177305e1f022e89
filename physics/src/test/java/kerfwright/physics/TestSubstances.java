package kerfwright.physics;

import java.util.List;
import java.util.Random;
import kerfwright.physics.material.Substance;

/**
 * Layers for tests. H, E and K_c of enamel after Park S et al. Dent Mater 2008;24:1477-1485, table
 * 1; of dentine, porcelain and zirconia after Zhang Y, Kelly JR. Dent Clin North Am
 * 2017;61:797-819, table 1; of cobalt-chromium H and E read, K_c from memory; of short cracks as in
 * the catalogue. Thermal figures do not enter the models tested with these.
 */
public final class TestSubstances {
  public static final Substance ENAMEL = withShortCracks(of(3.5, 82, 0.88, 3.5, 1), 0.67);
  public static final Substance DENTINE = of(0.6, 18, 3.1, 2.45, 0.12);
  public static final Substance PORCELAIN = withShortCracks(of(6.2, 72, 1.2, 6.2, 1), 0.8);
  public static final Substance ZIRCONIA = withShortCracks(of(13.4, 210, 4.0, 13.4, 1), 2.9);
  public static final Substance COBALT_CHROMIUM = of(3.43, 205, 50, 16.5, 0.07);
  public static final List<Substance> ALL =
      List.of(ENAMEL, DENTINE, PORCELAIN, ZIRCONIA, COBALT_CHROMIUM);

  private TestSubstances() {}

  /** A layer from GPa, GPa, MPa sqrt(m), GPa and a share. */
  public static Substance of(
      double hardnessGPa, double youngGPa, double toughness, double hardPhaseGPa, double share) {
    return new Substance(
        hardnessGPa * 1e9,
        youngGPa * 1e9,
        toughness * 1e6,
        2500,
        1,
        800,
        hardPhaseGPa * 1e9,
        share);
  }

  /** The same with another toughness for cracks as short as a grain's, MPa sqrt(m). */
  public static Substance withShortCracks(Substance s, double toughness) {
    return new Substance(
        s.hardnessPa(),
        s.youngPa(),
        s.toughnessPaSqrtM(),
        toughness * 1e6,
        s.densityKgPerM3(),
        s.conductivityWPerMK(),
        s.specificHeatJPerKgK(),
        s.hardPhaseHardnessPa(),
        s.hardPhaseShare());
  }

  /**
   * Any solid a layer may be: from gutta-percha to zirconia and tough steel in hardness (0.005 to
   * 20 GPa) and toughness (0.2 to 200 MPa sqrt(m)), 3 to 300 times as stiff as hard.
   */
  public static Substance any(Random random) {
    double hardness = logUniform(random, 0.005, 20);
    return of(
        hardness,
        hardness * logUniform(random, 3, 300),
        logUniform(random, 0.2, 200),
        hardness * logUniform(random, 1, 20),
        random.nextDouble());
  }

  /** A number spread evenly over the decades between two ends. */
  public static double logUniform(Random random, double low, double high) {
    return low * Math.exp(random.nextDouble() * Math.log(high / low));
  }
}
