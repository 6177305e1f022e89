package kerfwright.planner.tool;

import java.util.Map;
import java.util.Optional;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.physics.wear.Sharpness;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.plan.Estimate;
import kerfwright.quantity.RotationalSpeed;

/**
 * Share of an instrument's life that is left: 1 new, 0 worn out.
 *
 * <p>left = 1 - u / ln 3, u the lives used by cutting and, where steam sterilising left a share s
 * of the cut, another -ln s. Where volumes were recorded, what was cut comes from them by {@link
 * kerfwright.physics.wear.GrainWear} or {@link kerfwright.physics.wear.EdgeWear}, over the spread
 * of each material's properties and a third, two thirds and the whole of the greatest rim speed;
 * else from the number of uses: 5 a life (3 to 10), a project setting without a source. Order of
 * magnitude only.
 */
public final class LifeLeft {
  private static final Materials MATERIALS = Materials.packaged();

  /** Uses in a life: most, usual, fewest. */
  private static final double[] USES = {10, Instrument.USES_IN_A_LIFE, 3};

  /** Share of the greatest rim speed worked at: least, usual, most. */
  private static final double[] SPEED = {1.0 / 3, 2.0 / 3, 1};

  private LifeLeft() {}

  /**
   * What is left.
   *
   * @param drawer the instrument with its uses and sterilisations
   * @param cutMm3ByMaterial recorded volumes by material id, mm3; may be empty
   * @return empty where the working part is not known well enough
   */
  public static Optional<Estimate> of(
      DrawerInstrument drawer, Map<String, Double> cutMm3ByMaterial) {
    Instrument instrument = Instrument.of(drawer);
    if (instrument == null) {
      return Optional.empty();
    }
    boolean bladed = drawer.properties().kind().bladed();
    int cycles = drawer.sterilisations();
    double steam =
        -Math.log(
            bladed
                ? Sharpness.ofCarbideAfterCycles(cycles)
                : Sharpness.ofDiamondAfterCycles(cycles));
    double[] left = new double[3];
    for (int i = 0; i < 3; i++) {
      double cut =
          cutMm3ByMaterial.isEmpty()
              ? drawer.uses() / USES[i] * Sharpness.LIFE_END
              : lives(instrument, cutMm3ByMaterial, i);
      left[i] = Math.max(0, 1 - (cut + steam) / Sharpness.LIFE_END);
    }
    return Optional.of(new Estimate(left[2], left[1], left[0]));
  }

  private static double lives(Instrument instrument, Map<String, Double> cut, int spread) {
    RotationalSpeed greatest = instrument.properties().maximumSpeed();
    double radius = instrument.properties().headDiameter().metres() / 2;
    double rim = greatest == null ? 15 : greatest.rpm() * 2 * Math.PI / 60 * radius;
    double lives = 0;
    for (Map.Entry<String, Double> one : cut.entrySet()) {
      Material material = MATERIALS.find(one.getKey()).orElse(null);
      if (material == null) {
        continue;
      }
      double mostWear = 0;
      double leastWear = Double.POSITIVE_INFINITY;
      double usual = instrument.part().livesPerM3(material.typical(), rim * SPEED[spread]);
      for (var substance :
          new kerfwright.physics.material.Substance[] {
            material.spread().low(), material.typical(), material.spread().high()
          }) {
        double rate = instrument.part().livesPerM3(substance, rim * SPEED[spread]);
        mostWear = Math.max(mostWear, rate);
        leastWear = Math.min(leastWear, rate);
      }
      double rate = spread == 0 ? leastWear : spread == 1 ? usual : mostWear;
      lives += one.getValue() * 1e-9 * rate;
    }
    return lives;
  }
}
