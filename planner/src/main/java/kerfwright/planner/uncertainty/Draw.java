package kerfwright.planner.uncertainty;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import kerfwright.catalogue.material.Material;
import kerfwright.physics.material.Substance;
import kerfwright.planner.heat.HeatInputs;
import kerfwright.planner.heat.HeatParameter;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;
import org.jspecify.annotations.Nullable;

/**
 * One draw of everything uncertain. Thickness and properties: triangular between low, typical and
 * high; models: log-normal factors, 95 percent within a factor of two for removal and for the heat
 * share, shared by all steps of a draw because a wrong constant is wrong everywhere. {@link Random}
 * is specified to the bit, so a seed gives the same draws on every machine.
 */
public final class Draw {
  static final double REMOVAL_SIGMA = Math.log(2) / 2;
  static final double HEAT_SHARE_SIGMA = Math.log(2) / 2;
  static final double SPRAY_SIGMA = 0.25;
  static final double HAND_SIGMA = 0.15;

  final double abrasiveFactor;
  final double bladedFactor;
  final double heatShareFactor;
  final double sprayFactor;
  final double loadFactor;
  private final @Nullable Random random;
  private final HeatInputs heatInputs;
  private final Map<String, Substance> substances = new HashMap<>();

  /** The next draw of a seeded source. */
  public Draw(Random random) {
    this.random = random;
    abrasiveFactor = logNormal(random, REMOVAL_SIGMA);
    bladedFactor = logNormal(random, REMOVAL_SIGMA);
    heatShareFactor = logNormal(random, HEAT_SHARE_SIGMA);
    sprayFactor = logNormal(random, SPRAY_SIGMA);
    loadFactor = logNormal(random, HAND_SIGMA);
    // a stream of its own, so that what is drawn after does not depend on it
    Random heat = new Random(Double.doubleToLongBits(loadFactor));
    heatInputs =
        HeatInputs.drawn(
            heatShareFactor,
            sprayFactor,
            p -> triangular(p.low(), p.typical(), p.high(), heat.nextDouble()));
  }

  private Draw(double abrasive, double bladed, double heatShare, double spray) {
    random = null;
    abrasiveFactor = abrasive;
    bladedFactor = bladed;
    heatShareFactor = heatShare;
    sprayFactor = spray;
    loadFactor = 1;
    heatInputs = HeatInputs.drawn(heatShare, spray, HeatParameter::typical);
  }

  /** Everything at its typical value, with the models' factors as given; 1 leaves a model alone. */
  public static Draw fixed(double abrasive, double bladed, double heatShare, double spray) {
    return new Draw(abrasive, bladed, heatShare, spray);
  }

  /** Factor on the removal rate of abrasive working parts. */
  public double abrasiveFactor() {
    return abrasiveFactor;
  }

  /** Factor on the removal rate of blades. */
  public double bladedFactor() {
    return bladedFactor;
  }

  /** What the heat model takes in this draw, for a living tooth. */
  public HeatInputs heatInputs() {
    return heatInputs;
  }

  private static double logNormal(Random random, double sigma) {
    return Math.exp(sigma * random.nextGaussian());
  }

  double thicknessM(Range<Length> range) {
    return random == null
        ? range.typical().metres()
        : triangular(
            range.low().metres(),
            range.typical().metres(),
            range.high().metres(),
            random.nextDouble());
  }

  /** The same material has the same properties all through a draw. */
  public Substance substance(Material material) {
    Substance known = substances.get(material.id());
    if (known == null) {
      known = random == null ? material.typical() : drawn(material.spread(), random);
      substances.put(material.id(), known);
    }
    return known;
  }

  private static Substance drawn(Material.Spread s, Random random) {
    double hardness = random.nextDouble();
    double h = between(s, Substance::hardnessPa, hardness);
    double hard = between(s, Substance::hardPhaseHardnessPa, hardness);
    double young = random.nextDouble();
    double toughness = random.nextDouble();
    return new Substance(
        h,
        between(s, Substance::youngPa, young),
        between(s, Substance::toughnessPaSqrtM, toughness),
        between(s, Substance::shortCrackToughnessPaSqrtM, toughness),
        between(s, Substance::densityKgPerM3, random.nextDouble()),
        between(s, Substance::conductivityWPerMK, random.nextDouble()),
        between(s, Substance::specificHeatJPerKgK, random.nextDouble()),
        Math.max(h, hard),
        s.typical().hardPhaseShare());
  }

  private static double between(
      Material.Spread s, java.util.function.ToDoubleFunction<Substance> value, double share) {
    return triangular(
        value.applyAsDouble(s.low()),
        value.applyAsDouble(s.typical()),
        value.applyAsDouble(s.high()),
        share);
  }

  /** Inverse of the triangular distribution. */
  public static double triangular(double low, double mode, double high, double share) {
    if (high <= low) {
      return mode;
    }
    double split = (mode - low) / (high - low);
    return share < split
        ? low + Math.sqrt(share * (high - low) * (mode - low))
        : high - Math.sqrt((1 - share) * (high - low) * (high - mode));
  }
}
