package kerfwright.catalogue.evidence;

import kerfwright.catalogue.table.Numbers;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/**
 * What the models are asked to reproduce of one published finding.
 *
 * @param id id, e.g. DC032 or V12-load
 * @param row the finding
 * @param figure what is computed
 * @param comparison how it is held against the finding
 * @param statement what is compared, in a few words
 * @param first the set-up, or the first of two
 * @param second the second of two, or null
 * @param published the published figure in the unit of the case; blank for a direction
 * @param unit unit of published and computed figure
 * @param remark where the published figure needed arithmetic, may be empty
 * @param explanation why the models miss it; empty where they do not
 */
public record EvidenceCase(
    String id,
    EvidenceRow row,
    Figure figure,
    Comparison comparison,
    String statement,
    SetUp first,
    @Nullable SetUp second,
    Numbers published,
    String unit,
    String remark,
    String explanation) {
  /** What the models compute. */
  public enum Figure implements Identified {
    REMOVAL,
    SPEED_UNDER_LOAD,
    POWER_SPEED,
    TANGENTIAL_FORCE,
    SPECIFIC_ENERGY,
    CHIP_THICKNESS,
    BRITTLE_SHARE,
    USE_LOSS,
    STERILISATION_LOSS,
    ROUGHNESS,
    PULP_RISE,
    SURFACE_RISE,
    MOUTH_HEAT,
    ROOT_RISE;
  }

  /** How a computed figure is held against a published one. */
  public enum Comparison implements Identified {
    /** The published figure lies in the computed interval, or does not. */
    VALUE,
    /** The same for first over second. */
    RATIO,
    /** The first is greater than the second. */
    GREATER,
    /** The first is less than the second. */
    LESS,
    /** The two hardly differ. */
    SAME,
    /** The figure is not above the published one. */
    AT_MOST,
    /** The figure is not below the published one. */
    AT_LEAST;

    /** Whether an interval is compared, rather than a direction or a bound. */
    public boolean interval() {
      return this == VALUE || this == RATIO;
    }

    boolean needsTwo() {
      return this == RATIO || this == GREATER || this == LESS || this == SAME;
    }

    boolean needsFigure() {
      return interval() || this == AT_MOST || this == AT_LEAST;
    }
  }

  /** The published figure as one number: the typical value, or the middle of the range. */
  public double publishedMiddle() {
    Double typical = published.typical();
    if (typical != null) {
      return typical;
    }
    Double low = published.low();
    Double high = published.high();
    if (low != null && high != null) {
      return (low + high) / 2;
    }
    return low != null ? low : high != null ? high : Double.NaN;
  }
}
