package kerfwright.planner.casework;

import java.util.Map;
import java.util.Optional;
import kerfwright.catalogue.evidence.Family;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.physics.wear.Sharpness;

/**
 * How a practice's own times and wear compare with the literature: factors on the time in contact
 * and on the share of a life a volume takes. They never touch loads, speeds, heat limits or when an
 * instrument counts as worn out, and heat is simulated over no less than the literature's time.
 *
 * @param families factors on time by family of instruments, where a material has none of its own
 * @param times factors on time by material and kind
 * @param wear factors on wear by kind
 * @param logged how many cuts this rests on
 */
public record OwnPace(
    Map<Family, Factor> families,
    Map<Where, Factor> times,
    Map<InstrumentKind, Factor> wear,
    int logged) {
  /** Nothing learned: the literature as it is. */
  public static final OwnPace NONE = new OwnPace(Map.of(), Map.of(), Map.of(), 0);

  public OwnPace {
    families = Map.copyOf(families);
    times = Map.copyOf(times);
    wear = Map.copyOf(wear);
  }

  /**
   * Where a factor holds.
   *
   * @param materialId the material cut
   * @param kind kind of instrument
   */
  public record Where(String materialId, InstrumentKind kind) {}

  /**
   * A factor with the 90 percent interval of a cut, kept within bounds.
   *
   * @param low 5th percentile
   * @param typical median
   * @param high 95th percentile
   */
  public record Factor(double low, double typical, double high) {
    /** As in the literature. */
    public static final Factor ONE = new Factor(1, 1, 1);

    private static final double Z95 = 1.6449;

    /** Largest factor, and the inverse of the smallest. */
    public static final double BOUND = 100;

    public Factor {
      if (!(low <= typical && typical <= high)) {
        throw new IllegalArgumentException("factor " + low + ", " + typical + ", " + high);
      }
      low = bounded(low);
      typical = bounded(typical);
      high = bounded(high);
    }

    /** Standard deviation of its logarithm. */
    public double sd() {
      return Math.log(high / low) / (2 * Z95);
    }

    private static double bounded(double factor) {
      return Math.max(1 / BOUND, Math.min(BOUND, factor));
    }
  }

  /** Factor on the time in contact. */
  public Factor time(String materialId, InstrumentKind kind) {
    return known(materialId, kind).orElse(Factor.ONE);
  }

  /** The same, empty where nothing was learned of such instruments. */
  public Optional<Factor> known(String materialId, InstrumentKind kind) {
    Factor own = times.get(new Where(materialId, kind));
    return Optional.ofNullable(own != null ? own : families.get(Family.ofRate(kind.bladed())));
  }

  /**
   * Factor on the time in contact of an instrument that was used before: where it wears faster here
   * it is blunter than the models say, and the time longer by exp((w - 1) u).
   */
  public double time(String materialId, InstrumentKind kind, int uses) {
    double blunter = Math.exp((wear(kind).typical() - 1) * livesOfUses(uses));
    double factor = time(materialId, kind).typical() * blunter;
    return Math.max(1 / Factor.BOUND, Math.min(Factor.BOUND, factor));
  }

  /** Lives a number of uses takes by the models: ln 3 for five, as the planner has it. */
  public static double livesOfUses(int uses) {
    return uses / 5.0 * Sharpness.LIFE_END;
  }

  /** Factor on the lives a volume takes. */
  public Factor wear(InstrumentKind kind) {
    return wear.getOrDefault(kind, Factor.ONE);
  }
}
