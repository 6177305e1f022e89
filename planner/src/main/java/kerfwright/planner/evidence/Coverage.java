package kerfwright.planner.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import kerfwright.catalogue.evidence.Discrepancies;
import kerfwright.catalogue.evidence.Discrepancy;
import kerfwright.catalogue.evidence.Family;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.uncertainty.Percentiles;
import kerfwright.planner.uncertainty.Streams;
import org.jspecify.annotations.Nullable;

/**
 * How the bands hold on studies left out. Each study is predicted from the calibration studies
 * other than itself; no figure of it touches its own bands.
 *
 * @param family which figures; null for all of them
 * @param studies studies left out
 * @param figures their figures
 * @param covered figures inside their 90 percent band
 * @param medianWidth median width of the bands, as a factor or in kelvin; NaN for all families
 * @param score mean interval score of the bands on the family's scale; less is better
 * @param meanScore the same for bands about the mean of the other studies; NaN where there is none
 * @param scored figures the two scores rest on
 */
public record Coverage(
    @Nullable Family family,
    int studies,
    int figures,
    int covered,
    double medianWidth,
    double score,
    double meanScore,
    int scored) {
  /** Fewer studies than this test nothing. */
  public static final int TESTABLE = 5;

  static final double ALPHA = 0.1;
  private static final double WANTED_LOW = 0.8;
  private static final double WANTED_HIGH = 0.97;
  private static final double Z = 1.96;

  /** A figure left out, its band and that of the mean of the others, on the family's scale. */
  record Left(Residual figure, Estimate band, @Nullable Estimate mean) {
    double published() {
      return figure.family().scaled(figure.asked().publishedMiddle());
    }

    boolean covered() {
      return band.low() <= published() && published() <= band.high();
    }

    double width() {
      Family family = figure.family();
      return family.logarithmic() ? Math.exp(band.high() - band.low()) : band.high() - band.low();
    }

    double score(Estimate of, double published) {
      return of.high()
          - of.low()
          + 2 / ALPHA * Math.max(0, of.low() - published)
          + 2 / ALPHA * Math.max(0, published - of.high());
    }
  }

  /** Every figure predicted without its study. */
  static List<Left> leftOut(List<Residual> residuals, Comparing comparing, long seed) {
    List<Left> left = new ArrayList<>();
    for (Residual figure : residuals) {
      List<Residual> others =
          residuals.stream()
              .filter(Residual::calibration)
              .filter(r -> !r.study().equals(figure.study()))
              .toList();
      Discrepancies fitted = DiscrepancyFit.of(others);
      double[] band =
          Arrays.stream(comparing.with(fitted).predicted(figure.asked()))
              .map(figure.family()::scaled)
              .toArray();
      left.add(
          new Left(figure, Percentiles.of(band), mean(figure, others, fitted, band.length, seed)));
    }
    return left;
  }

  /** What one would say without any model: the other studies' mean and their scatter about it. */
  private static @Nullable Estimate mean(
      Residual figure, Collection<Residual> all, Discrepancies fitted, int samples, long seed) {
    Family family = figure.family();
    List<Double> means =
        DiscrepancyFit.byStudy(all.stream().filter(r -> r.family() == family).toList())
            .values()
            .stream()
            .map(s -> s.stream().mapToDouble(Residual::common).average().orElse(0))
            .toList();
    if (means.isEmpty()) {
      return null;
    }
    int k = means.size();
    double mean = means.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    double prior = DiscrepancyFit.priorBetween(family);
    double freedom = DiscrepancyFit.PRIOR_STUDIES + k - 1;
    double squares =
        DiscrepancyFit.PRIOR_STUDIES * prior * prior
            + means.stream().mapToDouble(m -> (m - mean) * (m - mean)).sum();
    double between = Math.sqrt(squares / freedom * (1 + 1.0 / k));
    Discrepancy d = fitted.of(family);
    double[] drawn = new double[samples];
    for (int i = 0; i < samples; i++) {
      Streams streams = new Streams(seed, i);
      drawn[i] =
          mean
              + between * streams.t("mean of others", freedom)
              + d.within() * streams.normal("mean of others, figure");
    }
    return Percentiles.of(drawn);
  }

  static Coverage of(@Nullable Family family, List<Left> all) {
    List<Left> left =
        all.stream().filter(l -> family == null || l.figure().family() == family).toList();
    Set<String> studies = new LinkedHashSet<>();
    left.forEach(l -> studies.add(l.figure().study()));
    double[] widths = left.stream().mapToDouble(Left::width).sorted().toArray();
    List<Left> scored = left.stream().filter(l -> l.mean() != null).toList();
    return new Coverage(
        family,
        studies.size(),
        left.size(),
        (int) left.stream().filter(Left::covered).count(),
        family == null || widths.length == 0 ? Double.NaN : Summary.median(widths),
        scored.stream()
            .mapToDouble(l -> l.score(l.band(), l.published()))
            .average()
            .orElse(Double.NaN),
        scored.stream()
            .mapToDouble(
                l -> l.score(java.util.Objects.requireNonNull(l.mean()), l.figure().common()))
            .average()
            .orElse(Double.NaN),
        scored.size());
  }

  /** The word the data files use; "all" for all families. */
  public String id() {
    Family known = family;
    return known == null ? "all" : known.id();
  }

  public double share() {
    return figures == 0 ? Double.NaN : (double) covered / figures;
  }

  public boolean testable() {
    return studies >= TESTABLE;
  }

  /** Whether coverage lies where it is wanted and the bands beat the mean of the others. */
  public boolean holds() {
    return covers() && (Double.isNaN(meanScore) || score < meanScore);
  }

  public boolean covers() {
    return share() >= WANTED_LOW && share() <= WANTED_HIGH;
  }

  /** 95 percent interval of the share by Wilson (J Am Stat Assoc 1927;22:209, from memory). */
  public Estimate binomial() {
    double n = Math.max(1, figures);
    double p = figures == 0 ? 0.5 : share();
    double middle = (p + Z * Z / (2 * n)) / (1 + Z * Z / n);
    double half = Z / (1 + Z * Z / n) * Math.sqrt(p * (1 - p) / n + Z * Z / (4 * n * n));
    return new Estimate(Math.max(0, middle - half), middle, Math.min(1, middle + half));
  }
}
