package kerfwright.planner.evidence;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import kerfwright.catalogue.evidence.Discrepancies;
import kerfwright.catalogue.evidence.Discrepancy;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.catalogue.evidence.EvidenceCase.Comparison;
import kerfwright.catalogue.evidence.Family;
import kerfwright.catalogue.evidence.SetUp;
import kerfwright.planner.evidence.figure.Figure;
import kerfwright.planner.evidence.figure.Trial;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.uncertainty.Draw;
import kerfwright.planner.uncertainty.Percentiles;
import kerfwright.planner.uncertainty.Streams;
import org.jspecify.annotations.Nullable;

/**
 * Computes a case the way a plan is computed: everything uncertain is drawn again and again, from
 * the ranges of conditions and properties and from what published figures lie off the models, and
 * the 5th to 95th percentile is the interval. Whatever is drawn is drawn by its name, so that no
 * case, material or finding moves another. A direction is judged at typical values.
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

  /** Each history of temperature meets so many draws of what figures lie off the models. */
  private static final int REUSED = 5;

  private final int samples;
  private final int heatSamples;
  private final long seed;
  private final Discrepancies discrepancies;
  private final Draw[] draws;
  private final Map<Computed, double[]> known;

  private record Computed(EvidenceCase.Figure figure, String setUp, String unit) {}

  /** Prepares the samples; heat takes the first of them only. */
  public Comparing(int samples, int heatSamples, long seed, Discrepancies discrepancies) {
    this.samples = samples;
    this.heatSamples = Math.min(samples, heatSamples);
    this.seed = seed;
    this.discrepancies = discrepancies;
    this.known = new HashMap<>();
    draws = new Draw[samples];
    for (int i = 0; i < samples; i++) {
      draws[i] = new Draw(seed, i);
    }
  }

  private Comparing(Comparing other, Discrepancies discrepancies) {
    this.samples = other.samples;
    this.heatSamples = other.heatSamples;
    this.seed = other.seed;
    this.discrepancies = discrepancies;
    this.known = other.known;
    this.draws = other.draws;
  }

  /** The same samples with other discrepancies. */
  Comparing with(Discrepancies others) {
    return new Comparing(this, others);
  }

  /** The figure with every condition typical and the models' factors of the draw. */
  public static double figure(EvidenceCase asked, SetUp setUp, Draw draw) {
    return new Figure(asked.figure()).of(Trial.typical(setUp, draw), asked.unit());
  }

  /** The figure of a trial. */
  public static double figure(EvidenceCase asked, Trial trial) {
    return new Figure(asked.figure()).of(trial, asked.unit());
  }

  /** What the models give over the ranges of conditions and properties. */
  double[] modelled(EvidenceCase asked, SetUp setUp, String unit) {
    return known.computeIfAbsent(
        new Computed(asked.figure(), setUp.id(), unit),
        key -> {
          Figure figure = new Figure(asked.figure());
          double[] values = new double[figure.slow() ? heatSamples : samples];
          for (int i = 0; i < values.length; i++) {
            values[i] = figure.of(Trial.drawn(setUp, draws[i]), unit);
          }
          return values;
        });
  }

  /** The same with what published figures lie off the models: of a laboratory, or of any. */
  private double[] published(EvidenceCase asked, SetUp setUp, boolean anyLaboratory) {
    double[] modelled = modelled(asked, setUp, asked.unit());
    Optional<Family> family = Family.of(asked.figure(), setUp);
    if (family.isEmpty()) {
      return modelled;
    }
    int reused = modelled.length < samples ? REUSED : 1;
    double[] values = new double[modelled.length * reused];
    for (int i = 0; i < values.length; i++) {
      double model = modelled[i % modelled.length];
      values[i] =
          family
              .get()
              .figure(family.get().scaled(model) + off(i, family.get(), setUp.id(), anyLaboratory));
    }
    return values;
  }

  /** What a figure lies off the models in a sample. */
  private double off(int sample, Family family, String figure, boolean anyLaboratory) {
    Discrepancy d = discrepancies.of(family);
    Streams streams = new Streams(seed, sample);
    double within = d.within() * streams.normal("figure " + family.id() + " " + figure);
    return anyLaboratory
        ? within + d.between() * streams.t("study " + family.id(), d.freedom())
        : within;
  }

  /** What a study might publish for a case, of any laboratory. */
  double[] predicted(EvidenceCase asked) {
    return published(asked, asked.first(), true);
  }

  /** One case. */
  public Compared compare(EvidenceCase asked) {
    if (asked.comparison() == Comparison.VALUE) {
      return interval(
          asked, published(asked, asked.first(), true), published(asked, asked.first(), false));
    }
    double[] first = published(asked, asked.first(), true);
    SetUp other = asked.second();
    double[] second = other == null ? new double[first.length] : published(asked, other, true);
    if (asked.comparison() == Comparison.RATIO) {
      double[] ratios = new double[first.length];
      for (int i = 0; i < ratios.length; i++) {
        ratios[i] = first[i] / second[i];
      }
      return interval(asked, ratios, ratios);
    }
    int holds = 0;
    for (int i = 0; i < first.length; i++) {
      holds += holds(asked, first[i], second[i]) ? 1 : 0;
    }
    return direction(asked, first, second, (double) holds / first.length);
  }

  private Compared interval(EvidenceCase asked, double[] any, double[] one) {
    Estimate computed = Percentiles.of(any);
    boolean inside = inside(asked, computed);
    return new Compared(
        asked,
        Standing.of(asked),
        computed,
        Percentiles.of(one),
        null,
        Percentiles.errorOfEnds(any, Math.min(any.length, independent(asked))),
        inside ? Verdict.INSIDE : Verdict.OUTSIDE,
        scatterInside(asked, computed, inside));
  }

  private int independent(EvidenceCase asked) {
    return new Figure(asked.figure()).slow() ? heatSamples : samples;
  }

  static boolean inside(EvidenceCase asked, Estimate computed) {
    double published = asked.publishedMiddle();
    // a model without any spread meets a figure to a hundredth of it, as far as it is printed
    double slack = computed.low() == computed.high() ? 0.01 * Math.abs(published) : 0;
    return published >= computed.low() - slack && published <= computed.high() + slack;
  }

  /** Share of the published range that lies in the interval; all or nothing without a range. */
  private static double scatterInside(EvidenceCase asked, Estimate computed, boolean inside) {
    Double low = asked.published().low();
    Double high = asked.published().high();
    if (low == null || high == null || low >= high) {
      return inside ? 1 : 0;
    }
    double common = Math.min(high, computed.high()) - Math.max(low, computed.low());
    return Math.max(0, common) / (high - low);
  }

  private Compared direction(EvidenceCase asked, double[] first, double[] second, double holds) {
    Draw typical = Draw.fixed(1, 1, 1, 1);
    SetUp other = asked.second();
    double one = figure(asked, asked.first(), typical);
    double two = other == null ? 0 : figure(asked, other, typical);
    @Nullable Estimate secondEstimate = other == null ? null : Percentiles.of(second);
    Estimate computed = Percentiles.of(first);
    return new Compared(
        asked,
        Standing.of(asked),
        computed,
        computed,
        secondEstimate,
        Percentiles.errorOfEnds(first, Math.min(first.length, independent(asked))),
        holds(asked, one, two) ? Verdict.RIGHT : Verdict.WRONG,
        holds);
  }

  static boolean holds(EvidenceCase asked, double one, double two) {
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
