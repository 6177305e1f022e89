package kerfwright.planner.uncertainty;

import java.util.HashMap;
import java.util.Map;
import kerfwright.catalogue.evidence.Discrepancies;
import kerfwright.catalogue.evidence.Discrepancy;
import kerfwright.catalogue.evidence.Family;
import kerfwright.catalogue.material.Material;
import kerfwright.physics.material.Substance;
import kerfwright.planner.heat.HeatInputs;
import kerfwright.planner.heat.HeatParameter;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;
import org.jspecify.annotations.Nullable;

/**
 * One draw of everything uncertain. Thickness and properties: triangular between low, typical and
 * high. What published figures lie off the models ({@link Discrepancy}), the share of heat and the
 * spray among it, is drawn twice: once for the whole draw, as a laboratory or a hand is off in all
 * it does, and once for each figure. Everything is drawn by its name ({@link Streams}).
 */
public final class Draw {
  static final double HAND_SIGMA = 0.15;

  final double loadFactor;
  private final double abrasiveFactor;
  private final double bladedFactor;
  private final HeatInputs heatInputs;
  private final @Nullable Streams streams;
  private final Map<String, Substance> substances = new HashMap<>();

  /** A sample of a seed. */
  public Draw(long seed, int sample) {
    streams = new Streams(seed, sample);
    abrasiveFactor = 1;
    bladedFactor = 1;
    loadFactor = logNormal("hand", HAND_SIGMA);
    heatInputs =
        HeatInputs.drawn(
            1, 1, p -> triangular(p.low(), p.typical(), p.high(), share("heat " + p.name())));
  }

  private Draw(double abrasive, double bladed, double heatShare, double spray) {
    streams = null;
    abrasiveFactor = abrasive;
    bladedFactor = bladed;
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

  private double logNormal(String name, double sigma) {
    return streams == null ? 1 : StrictMath.exp(sigma * streams.normal(name));
  }

  /** Where in its range a named condition lies, 0 to 1; in the middle where nothing is drawn. */
  public double share(String name) {
    return streams == null ? 0.5 : streams.uniform(name);
  }

  /**
   * What a figure lies off the models on the scale of its family: the draw's own part, shared by
   * all its figures of the family, and that of the figure.
   */
  public double off(Family family, String figure) {
    return between(family, Discrepancies.packaged()) + within(family, figure);
  }

  /** The part shared by all figures of a family. */
  public double between(Family family, Discrepancies known) {
    Discrepancy d = known.of(family);
    return streams == null ? 0 : d.between() * streams.t("study " + family.id(), d.freedom());
  }

  /** The part of one figure. */
  public double within(Family family, String figure) {
    return streams == null
        ? 0
        : Discrepancies.packaged().of(family).within()
            * streams.normal("figure " + family.id() + " " + figure);
  }

  /** A standard normal number by name; 0 where nothing is drawn. */
  public double normal(String name) {
    return streams == null ? 0 : streams.normal(name);
  }

  double thicknessM(Range<Length> range, int layer) {
    return streams == null
        ? range.typical().metres()
        : triangular(
            range.low().metres(),
            range.typical().metres(),
            range.high().metres(),
            streams.uniform("thickness " + layer));
  }

  /** The same material has the same properties all through a draw. */
  public Substance substance(Material material) {
    Substance known = substances.get(material.id());
    if (known == null) {
      known =
          streams == null
              ? material.typical()
              : drawn(material.spread(), streams, material.id() + " ");
      substances.put(material.id(), known);
    }
    return known;
  }

  private static Substance drawn(Material.Spread s, Streams streams, String of) {
    double hardness = streams.uniform(of + "hardness");
    double h = between(s, Substance::hardnessPa, hardness);
    double hard = between(s, Substance::hardPhaseHardnessPa, hardness);
    double young = streams.uniform(of + "stiffness");
    double toughness = streams.uniform(of + "toughness");
    return new Substance(
        h,
        between(s, Substance::youngPa, young),
        between(s, Substance::toughnessPaSqrtM, toughness),
        between(s, Substance::shortCrackToughnessPaSqrtM, toughness),
        between(s, Substance::densityKgPerM3, streams.uniform(of + "density")),
        between(s, Substance::conductivityWPerMK, streams.uniform(of + "conductivity")),
        between(s, Substance::specificHeatJPerKgK, streams.uniform(of + "specific heat")),
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
