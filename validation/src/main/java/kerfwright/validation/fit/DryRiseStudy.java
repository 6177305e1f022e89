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
 * out. All roles take part, for no constant of the code is set here. Studies weigh the same.
 */
final class DryRiseStudy {
  /** One dry figure: the model is a + b times the share's factor. */
  private record Figure(double published, double a, double b) {}

  /**
   * A study left out.
   *
   * @param source its key
   * @param published mean of its figures, K
   * @param model mean of what the model says of them
   * @param others mean of the other studies
   * @param modelMissK root mean square miss of the model over its figures
   * @param othersMissK the same for the mean of the others
   */
  record LeftOut(
      String source,
      double published,
      double model,
      double others,
      double modelMissK,
      double othersMissK) {}

  private final Map<String, List<Figure>> studies = new LinkedHashMap<>();

  DryRiseStudy() {
    for (EvidenceCase one : EvidenceCases.packaged().all()) {
      if (one.figure() == EvidenceCase.Figure.PULP_RISE
          && one.comparison() == EvidenceCase.Comparison.VALUE
          && one.first().get(ConditionKind.WATER).typical() == 0) {
        double once = Comparing.figure(one, one.first(), Draw.fixed(1, 1, 1, 1));
        double twice = Comparing.figure(one, one.first(), Draw.fixed(1, 1, 2, 1));
        double b = twice - once;
        studies
            .computeIfAbsent(one.row().sources().toString(), key -> new ArrayList<>())
            .add(new Figure(one.publishedMiddle(), once - b, b));
      }
    }
  }

  List<LeftOut> leaveOneOut() {
    List<LeftOut> all = new ArrayList<>();
    for (Map.Entry<String, List<Figure>> out : studies.entrySet()) {
      double top = 0;
      double bottom = 0;
      double others = 0;
      for (Map.Entry<String, List<Figure>> in : studies.entrySet()) {
        if (!in.getKey().equals(out.getKey())) {
          double weight = 1.0 / in.getValue().size();
          for (Figure f : in.getValue()) {
            top += weight * f.b() * (f.published() - f.a());
            bottom += weight * f.b() * f.b();
            others += weight * f.published() / (studies.size() - 1);
          }
        }
      }
      all.add(leftOut(out.getKey(), out.getValue(), top / bottom, others));
    }
    return all;
  }

  private static LeftOut leftOut(String source, List<Figure> figures, double share, double others) {
    int n = figures.size();
    double published = 0;
    double model = 0;
    double modelMiss = 0;
    double othersMiss = 0;
    for (Figure f : figures) {
      double computed = f.a() + f.b() * share;
      published += f.published() / n;
      model += computed / n;
      modelMiss += (computed - f.published()) * (computed - f.published()) / n;
      othersMiss += (others - f.published()) * (others - f.published()) / n;
    }
    return new LeftOut(
        source, published, model, others, Math.sqrt(modelMiss), Math.sqrt(othersMiss));
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
