package kerfwright.planner.evidence;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kerfwright.catalogue.evidence.Discrepancies;
import kerfwright.catalogue.evidence.Discrepancy;
import kerfwright.catalogue.evidence.Family;

/**
 * Fits what published figures lie off the models: between studies and within one.
 *
 * <p>y(ij) = scaled(published) - scaled(model) = b(i) + e(ij), b ~ N(0, t2), e ~ N(0, s2)
 *
 * <p>The model is not moved to the middle of the studies: what it is off by is part of b. With
 * scaled inverse chi-squared priors, which count as so many studies or figures of a given spread,
 *
 * <p>s2 = (m s0^2 + sum of (y(ij) - y(i))^2) / (m + figures - studies)
 *
 * <p>t2 = (n t0^2 + sum of w(i) max(0, y(i)^2 - v(i))) / (n + sum of w(i)), w(i) = (t2 / (t2 +
 * v(i)))^2
 *
 * <p>and what a new study is off by is t-distributed with n + sum of w(i) degrees of freedom
 * (Gelman A et al., Bayesian Data Analysis, conjugate normal model, with the weights of restricted
 * maximum likelihood; from memory). y(i) is the mean of a study, v(i) its variance over untold
 * conditions and properties, which a prediction draws anew and which is therefore no part of t2; a
 * study that tells little of its conditions says little and weighs little. The scatter of y(i) from
 * its few figures is left in t2: a little wide rather than a little narrow. Few studies give few
 * degrees of freedom and long tails; rows added to one study hardly narrow anything.
 *
 * <p>Priors are project settings, set before a figure was compared: a laboratory is off by a factor
 * of e for rates, two for wear, 1.6 for roughness, 3 K for heat; a figure in it by what the scatter
 * of one laboratory was taken for, 95 percent within a factor of two, or 1.5 K.
 */
public final class DiscrepancyFit {
  static final double PRIOR_STUDIES = 2;
  static final double PRIOR_FIGURES = 4;
  private static final int ITERATIONS = 100;

  private DiscrepancyFit() {}

  /** Every family, from the figures given. */
  static Discrepancies of(Collection<Residual> residuals) {
    Map<Family, Discrepancy> fitted = new EnumMap<>(Family.class);
    for (Family family : Family.values()) {
      fitted.put(family, of(family, residuals.stream().filter(r -> r.family() == family).toList()));
    }
    return new Discrepancies(fitted);
  }

  private static Discrepancy of(Family family, List<Residual> residuals) {
    double within = PRIOR_FIGURES * square(priorWithin(family));
    Collection<List<Residual>> studies = byStudy(residuals).values();
    List<double[]> offs = new ArrayList<>();
    for (List<Residual> study : studies) {
      double mean = study.stream().mapToDouble(Residual::mean).average().orElse(0);
      within += study.stream().mapToDouble(r -> square(r.mean() - mean)).sum();
      offs.add(new double[] {square(mean), variance(study)});
    }
    double prior = square(priorBetween(family));
    double between = prior;
    double freedom = PRIOR_STUDIES;
    for (int i = 0; i < ITERATIONS; i++) {
      double squares = PRIOR_STUDIES * prior;
      freedom = PRIOR_STUDIES;
      for (double[] off : offs) {
        double weight = square(between / (between + off[1]));
        squares += weight * Math.max(0, off[0] - off[1]);
        freedom += weight;
      }
      between = squares / freedom;
    }
    return new Discrepancy(
        family,
        Math.sqrt(between),
        freedom,
        Math.sqrt(within / (PRIOR_FIGURES + residuals.size() - studies.size())),
        studies.size(),
        residuals.size());
  }

  static Map<String, List<Residual>> byStudy(Collection<Residual> residuals) {
    return residuals.stream()
        .collect(Collectors.groupingBy(Residual::study, LinkedHashMap::new, Collectors.toList()));
  }

  /** Variance of a study's mean over untold conditions and properties. */
  private static double variance(List<Residual> study) {
    int samples = study.get(0).off().length;
    double sum = 0;
    double squares = 0;
    for (int s = 0; s < samples; s++) {
      int sample = s;
      double mean = study.stream().mapToDouble(r -> r.off()[sample]).average().orElse(0);
      sum += mean;
      squares += mean * mean;
    }
    return squares / samples - square(sum / samples);
  }

  static double priorBetween(Family family) {
    return switch (family) {
      case ABRASIVE_RATE, BLADE_RATE -> 1;
      case WEAR -> Math.log(2);
      case ROUGHNESS -> 0.5;
      case DRY_HEAT, WET_HEAT -> 3;
    };
  }

  private static double priorWithin(Family family) {
    return family.logarithmic() ? Math.log(2) / 2 : 1.5;
  }

  private static double square(double x) {
    return x * x;
  }
}
