package kerfwright.planner.evidence;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import kerfwright.catalogue.evidence.CaseLists;
import kerfwright.catalogue.evidence.Discrepancies;
import kerfwright.catalogue.evidence.Discrepancy;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.catalogue.evidence.EvidenceCase.Comparison;
import kerfwright.catalogue.evidence.EvidenceCases;
import kerfwright.catalogue.evidence.EvidenceRow;
import kerfwright.catalogue.evidence.Family;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.uncertainty.OwnLevel;
import kerfwright.planner.uncertainty.Percentiles;
import kerfwright.planner.uncertainty.Streams;

/**
 * What a few figures of a laboratory tell of its others, on published studies: the first half of a
 * study's figures is taken as the cuts of a practice, the rest is predicted from them. A published
 * ratio is one figure predicted from another.
 *
 * @param family which figures
 * @param studies studies with more than one figure
 * @param figures figures predicted
 * @param covered those inside their 90 percent band
 * @param medianWidth median width of the bands, as a factor or in kelvin
 */
public record Conditioned(
    Family family, int studies, int figures, int covered, double medianWidth) {

  private record Predicted(String study, boolean covered, double width) {}

  static List<Conditioned> all(List<Residual> residuals, Comparing comparing) {
    List<Conditioned> all = new ArrayList<>();
    for (Family family : Family.values()) {
      List<Predicted> predicted = new ArrayList<>();
      List<Residual> own = residuals.stream().filter(r -> r.family() == family).toList();
      DiscrepancyFit.byStudy(own)
          .forEach((study, figures) -> predict(study, figures, residuals, predicted));
      ratios(family, residuals, comparing, predicted);
      all.add(of(family, predicted));
    }
    return all;
  }

  private static Conditioned of(Family family, List<Predicted> predicted) {
    Set<String> studies = new LinkedHashSet<>();
    predicted.forEach(p -> studies.add(p.study()));
    double[] widths = predicted.stream().mapToDouble(Predicted::width).sorted().toArray();
    return new Conditioned(
        family,
        studies.size(),
        predicted.size(),
        (int) predicted.stream().filter(Predicted::covered).count(),
        widths.length == 0 ? Double.NaN : Summary.median(widths));
  }

  private static Discrepancies without(String study, List<Residual> residuals) {
    return DiscrepancyFit.of(
        residuals.stream()
            .filter(Residual::calibration)
            .filter(r -> !r.study().equals(study))
            .toList());
  }

  private static void predict(
      String study, List<Residual> figures, List<Residual> all, List<Predicted> predicted) {
    int first = figures.size() / 2;
    if (first == 0) {
      return;
    }
    Family family = figures.get(0).family();
    Discrepancy d = without(study, all).of(family);
    OwnLevel level = OwnLevel.prior(d).after(first, d.within());
    List<Residual> known = figures.subList(0, first);
    for (Residual asked : figures.subList(first, figures.size())) {
      double[] drawn = new double[asked.off().length];
      for (int i = 0; i < drawn.length; i++) {
        int sample = i;
        double off = known.stream().mapToDouble(r -> r.off()[sample]).average().orElse(0);
        Streams streams = new Streams(EvidenceReport.SEED, i);
        drawn[i] =
            -asked.off()[i]
                + level.weight() * off
                + level.sd() * streams.normal("own")
                + d.within() * streams.normal("own, figure");
      }
      // the published figure is the origin: scaled(model) is -off away from it
      predicted.add(of(study, family, Percentiles.of(drawn), 0));
    }
  }

  private static Predicted of(String study, Family family, Estimate band, double published) {
    double width = band.high() - band.low();
    return new Predicted(
        study,
        band.low() <= published && published <= band.high(),
        family.logarithmic() ? Math.exp(width) : width);
  }

  private static void ratios(
      Family family, List<Residual> all, Comparing comparing, List<Predicted> predicted) {
    for (EvidenceCase asked : EvidenceCases.packaged().all()) {
      if (asked.comparison() == Comparison.RATIO
          && asked.row().role() != EvidenceRow.Role.CONTEXT
          && !CaseLists.packaged().byConstruction().containsKey(asked.id())
          && Family.of(asked.figure(), asked.first()).filter(f -> f == family).isPresent()) {
        String study = asked.row().sources().get(0).key();
        Estimate band = comparing.with(without(study, all)).compare(asked).computed();
        predicted.add(
            of(
                study,
                family,
                new Estimate(
                    family.scaled(band.low()),
                    family.scaled(band.typical()),
                    family.scaled(band.high())),
                family.scaled(asked.publishedMiddle())));
      }
    }
  }
}
