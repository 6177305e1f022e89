package kerfwright.catalogue.evidence;

import java.util.Optional;
import kerfwright.quantity.Identified;

/**
 * Kinds of figures whose scatter is alike. Each is looked at on a scale on which scatter adds: the
 * logarithm for rates and roughness, the logarithm of the sharpness used up for wear, kelvin for
 * heat.
 */
public enum Family implements Identified {
  ABRASIVE_RATE(Scale.LOGARITHM),
  BLADE_RATE(Scale.LOGARITHM),
  WEAR(Scale.LOGARITHM_OF_LOSS),
  ROUGHNESS(Scale.LOGARITHM),
  DRY_HEAT(Scale.KELVIN),
  WET_HEAT(Scale.KELVIN);

  private final Scale scale;

  Family(Scale scale) {
    this.scale = scale;
  }

  private enum Scale {
    LOGARITHM,
    /** ln(-ln(1 - loss)): a loss of sharpness exp(-u) is ln u, whatever u is. */
    LOGARITHM_OF_LOSS,
    KELVIN
  }

  /** Whether widths are told as a factor. */
  public boolean logarithmic() {
    return scale != Scale.KELVIN;
  }

  /** A figure on the scale on which scatter adds; losses are percent. */
  public double scaled(double figure) {
    return switch (scale) {
      case LOGARITHM -> Math.log(figure);
      case LOGARITHM_OF_LOSS -> Math.log(-Math.log1p(-Math.min(99.9, figure) / 100));
      case KELVIN -> figure;
    };
  }

  /** The figure of a place on that scale. */
  public double figure(double scaled) {
    return switch (scale) {
      case LOGARITHM -> Math.exp(scaled);
      case LOGARITHM_OF_LOSS -> -100 * Math.expm1(-Math.exp(scaled));
      case KELVIN -> scaled;
    };
  }

  /** The family of the rate of blades, or of an abrasive. */
  public static Family ofRate(boolean bladed) {
    return bladed ? BLADE_RATE : ABRASIVE_RATE;
  }

  /** The family of what a case computes in a set-up; empty where none of them. */
  public static Optional<Family> of(EvidenceCase.Figure figure, SetUp setUp) {
    boolean carbide = setUp.tool() == SetUp.Tool.CARBIDE;
    return Optional.ofNullable(
        switch (figure) {
          case REMOVAL, SPECIFIC_ENERGY -> ofRate(carbide);
          case USE_LOSS, STERILISATION_LOSS -> WEAR;
          case ROUGHNESS -> ROUGHNESS;
          case PULP_RISE, ROOT_RISE ->
              setUp.find(ConditionKind.WATER).map(w -> w.high() > 0).orElse(false)
                  ? WET_HEAT
                  : DRY_HEAT;
          default -> null;
        });
  }
}
