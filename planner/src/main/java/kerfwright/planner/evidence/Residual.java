package kerfwright.planner.evidence;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.evidence.CaseLists;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.catalogue.evidence.EvidenceRow;
import kerfwright.catalogue.evidence.Family;
import kerfwright.planner.evidence.figure.Figure;
import kerfwright.planner.evidence.figure.Trial;
import kerfwright.planner.uncertainty.Draw;

/**
 * A published figure less what the models give, on the scale of its family, in every sample of the
 * conditions and properties.
 *
 * @param asked the case
 * @param family its family
 * @param off published less modelled
 * @param common the published figure in a unit common to its family, scaled: mm3/min for rates
 */
record Residual(EvidenceCase asked, Family family, double[] off, double common) {

  /** Every value of the catalogue that belongs to a family and that no constant is read from. */
  static List<Residual> all(Comparing comparing, List<EvidenceCase> cases) {
    return cases.stream().flatMap(c -> of(comparing, c).stream()).toList();
  }

  private static Optional<Residual> of(Comparing comparing, EvidenceCase asked) {
    boolean told = asked.row().role() != EvidenceRow.Role.CONTEXT && Standing.isValue(asked);
    boolean free = !CaseLists.packaged().byConstruction().containsKey(asked.id());
    return told && free
        ? Family.of(asked.figure(), asked.first()).map(f -> of(comparing, asked, f))
        : Optional.empty();
  }

  private static Residual of(Comparing comparing, EvidenceCase asked, Family family) {
    double[] modelled = comparing.modelled(asked, asked.first(), asked.unit());
    double published = family.scaled(asked.publishedMiddle());
    double[] off = Arrays.stream(modelled).map(m -> published - family.scaled(m)).toArray();
    double typical = Comparing.figure(asked, asked.first(), Draw.fixed(1, 1, 1, 1));
    return new Residual(
        asked,
        family,
        off,
        published - family.scaled(typical) + family.scaled(common(asked, typical)));
  }

  private static double common(EvidenceCase asked, double typical) {
    return asked.figure() == EvidenceCase.Figure.REMOVAL
        ? Figure.removal(Trial.typical(asked.first(), Draw.fixed(1, 1, 1, 1)), "mm3/min")
        : typical;
  }

  String study() {
    return asked.row().sources().get(0).key();
  }

  boolean calibration() {
    return asked.row().role() == EvidenceRow.Role.CALIBRATION;
  }

  double mean() {
    return Arrays.stream(off).average().orElse(0);
  }
}
