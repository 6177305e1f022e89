package kerfwright.validation.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerfwright.catalogue.evidence.ConditionKind;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.catalogue.evidence.EvidenceCases;
import kerfwright.planner.evidence.Comparing;
import kerfwright.planner.uncertainty.Draw;

/**
 * Asks whether the model of heat tells more of a dry test than the other studies' mean does: each
 * study in turn is left out, the heat share is fitted to the rest, and both predict the study left
 * out. All roles take part, for no constant of the code is set here. Studies weigh the same; all is
 * done in logarithms, because the laboratories differ by factors.
 */
final class DryRiseStudy {
  /** One dry figure and the model of it; a dry rise is in proportion to the share. */
  private record Figure(double published, double computed) {
    double logRatio() {
      return Math.log(published / computed);
    }
  }

  /**
   * A study left out.
   *
   * @param source its key
   * @param publishedK mean of its figures
   * @param modelK mean of what the model says of them
   * @param othersK geometric mean of the other studies
   * @param modelMiss root mean square miss of the model over its figures, logarithm
   * @param othersMiss the same for the mean of the others
   */
  record LeftOut(
      String source,
      double publishedK,
      double modelK,
      double othersK,
      double modelMiss,
      double othersMiss) {}

  private final Map<String, List<Figure>> studies = new LinkedHashMap<>();

  DryRiseStudy() {
    for (EvidenceCase one : EvidenceCases.packaged().all()) {
      if (one.figure() == EvidenceCase.Figure.PULP_RISE
          && one.comparison() == EvidenceCase.Comparison.VALUE
          && one.first().get(ConditionKind.WATER).typical() == 0) {
        studies
            .computeIfAbsent(one.row().sources().toString(), key -> new ArrayList<>())
            .add(
                new Figure(
                    one.publishedMiddle(),
                    Comparing.figure(one, one.first(), Draw.fixed(1, 1, 1, 1))));
      }
    }
  }

  List<LeftOut> leaveOneOut() {
    List<LeftOut> all = new ArrayList<>();
    for (Map.Entry<String, List<Figure>> out : studies.entrySet()) {
      double share = 0;
      double others = 0;
      for (Map.Entry<String, List<Figure>> in : studies.entrySet()) {
        if (!in.getKey().equals(out.getKey())) {
          double weight = 1.0 / in.getValue().size() / (studies.size() - 1);
          for (Figure f : in.getValue()) {
            share += weight * f.logRatio();
            others += weight * Math.log(f.published());
          }
        }
      }
      all.add(leftOut(out.getKey(), out.getValue(), share, others));
    }
    return all;
  }

  private static LeftOut leftOut(
      String source, List<Figure> figures, double logShare, double logOthers) {
    int n = figures.size();
    double published = 0;
    double model = 0;
    double modelMiss = 0;
    double othersMiss = 0;
    for (Figure f : figures) {
      published += f.published() / n;
      model += f.computed() * Math.exp(logShare) / n;
      modelMiss += Math.pow(f.logRatio() - logShare, 2) / n;
      othersMiss += Math.pow(Math.log(f.published()) - logOthers, 2) / n;
    }
    return new LeftOut(
        source, published, model, Math.exp(logOthers), Math.sqrt(modelMiss), Math.sqrt(othersMiss));
  }

  /** Root mean square over the studies. */
  static double rms(List<LeftOut> all, java.util.function.ToDoubleFunction<LeftOut> miss) {
    return Math.sqrt(
        all.stream()
            .mapToDouble(one -> miss.applyAsDouble(one) * miss.applyAsDouble(one))
            .average()
            .orElse(Double.NaN));
  }
}
