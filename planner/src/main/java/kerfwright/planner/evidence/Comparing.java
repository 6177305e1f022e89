package kerfwright.planner.evidence;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import kerfwright.catalogue.evidence.ConditionKind;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.catalogue.evidence.EvidenceCase.Comparison;
import kerfwright.catalogue.evidence.SetUp;
import kerfwright.catalogue.material.Materials;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.uncertainty.Draw;
import kerfwright.planner.uncertainty.Percentiles;
import org.jspecify.annotations.Nullable;

/**
 * Computes a case the way a plan is computed: everything uncertain is drawn again and again, from
 * the planner's own spreads and the ranges of the conditions, and the 5th to 95th percentile is the
 * interval. Nothing is widened to catch a figure. A direction is judged at typical values.
 */
public final class Comparing {
  /** From this factor up two figures differ. */
  static final double DIFFERS = 1.05;

  /** Up to this factor two figures are the same. */
  static final double SAME = 1.25;

  /** From this difference up two temperatures differ. */
  static final double DIFFERS_K = 0.1;

  /** Up to this difference two temperatures are the same. */
  static final double SAME_K = 1;

  private final int heatSamples;
  private final Draw[] draws;
  private final double[][] shares;
  private final Map<Computed, double[]> known = new HashMap<>();

  private record Computed(EvidenceCase.Figure figure, String setUp, String unit) {}

  /**
   * Prepares the samples. Every case meets the same draws, and a draw holds every material of the
   * catalogue before it is used, so that no case depends on the others. Heat takes the first of
   * them only.
   */
  public Comparing(int samples, int heatSamples, long seed) {
    this.heatSamples = Math.min(samples, heatSamples);
    Random random = new Random(seed);
    // conditions of a tooth's start came later: a stream of their own leaves the other draws alone
    Random start = new Random(~seed);
    draws = new Draw[samples];
    shares = new double[samples][ConditionKind.values().length];
    for (int i = 0; i < samples; i++) {
      Draw draw = new Draw(random);
      Materials.packaged().all().forEach(draw::substance);
      draws[i] = draw;
      for (int k = 0; k < shares[i].length; k++) {
        shares[i][k] = (k <= ConditionKind.FILM.ordinal() ? random : start).nextDouble();
      }
    }
  }

  /** The figure with every condition typical and the models' factors of the draw. */
  public static double figure(EvidenceCase asked, SetUp setUp, Draw draw) {
    return Figure.of(asked.figure()).of(Trial.typical(setUp, draw), asked.unit());
  }

  /** The figure of a trial. */
  public static double figure(EvidenceCase asked, Trial trial) {
    return Figure.of(asked.figure()).of(trial, asked.unit());
  }

  private double[] samples(EvidenceCase asked, SetUp setUp) {
    return known.computeIfAbsent(
        new Computed(asked.figure(), setUp.id(), asked.unit()),
        key -> {
          Figure figure = Figure.of(asked.figure());
          double[] values = new double[figure.slow() ? heatSamples : draws.length];
          for (int i = 0; i < values.length; i++) {
            values[i] = figure.of(Trial.drawn(setUp, draws[i], shares[i]), asked.unit());
          }
          return values;
        });
  }

  /** One case. */
  public Compared compare(EvidenceCase asked) {
    double[] first = samples(asked, asked.first());
    SetUp other = asked.second();
    double[] second = other == null ? new double[first.length] : samples(asked, other);
    if (asked.comparison() == Comparison.VALUE) {
      return interval(asked, Percentiles.of(first));
    }
    if (asked.comparison() == Comparison.RATIO) {
      double[] ratios = new double[first.length];
      for (int i = 0; i < ratios.length; i++) {
        ratios[i] = first[i] / second[i];
      }
      return interval(asked, Percentiles.of(ratios));
    }
    int holds = 0;
    for (int i = 0; i < first.length; i++) {
      holds += holds(asked, first[i], second[i]) ? 1 : 0;
    }
    return direction(asked, first, second, (double) holds / first.length);
  }

  private static Compared interval(EvidenceCase asked, Estimate computed) {
    double published = asked.publishedMiddle();
    // a model without any spread meets a figure to a hundredth of it, as far as it is printed
    double slack = computed.low() == computed.high() ? 0.01 * Math.abs(published) : 0;
    boolean inside = published >= computed.low() - slack && published <= computed.high() + slack;
    return new Compared(
        asked, computed, null, inside ? Verdict.INSIDE : Verdict.OUTSIDE, inside ? 1 : 0);
  }

  private static Compared direction(
      EvidenceCase asked, double[] first, double[] second, double holds) {
    Draw typical = Draw.fixed(1, 1, 1, 1);
    SetUp other = asked.second();
    double one = figure(asked, asked.first(), typical);
    double two = other == null ? 0 : figure(asked, other, typical);
    @Nullable Estimate secondEstimate = other == null ? null : Percentiles.of(second);
    return new Compared(
        asked,
        Percentiles.of(first),
        secondEstimate,
        holds(asked, one, two) ? Verdict.RIGHT : Verdict.WRONG,
        holds);
  }

  private static boolean holds(EvidenceCase asked, double one, double two) {
    boolean kelvin =
        asked.figure() == EvidenceCase.Figure.PULP_RISE
            || asked.figure() == EvidenceCase.Figure.SURFACE_RISE
            || asked.figure() == EvidenceCase.Figure.ROOT_RISE;
    return switch (asked.comparison()) {
      case GREATER -> kelvin ? one > two + DIFFERS_K : one > two * DIFFERS;
      case LESS -> kelvin ? one < two - DIFFERS_K : one * DIFFERS < two;
      case SAME -> kelvin ? Math.abs(one - two) <= SAME_K : one <= two * SAME && two <= one * SAME;
      case AT_MOST -> one <= asked.publishedMiddle();
      case AT_LEAST -> one >= asked.publishedMiddle();
      case VALUE, RATIO -> false;
    };
  }
}
