package kerfwright.planner.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kerfwright.catalogue.evidence.Discrepancy;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.catalogue.evidence.EvidenceCases;
import kerfwright.catalogue.evidence.EvidenceRow;
import kerfwright.catalogue.evidence.Family;
import kerfwright.planner.uncertainty.Streams;
import kerfwright.quantity.SourceKey;
import org.junit.jupiter.api.Test;

class DiscrepancyFitTest {
  private static final Family FAMILY = Family.ABRASIVE_RATE;
  private static final EvidenceCase ANY = EvidenceCases.packaged().all().get(0);

  private static Residual residual(String study, double off, double conditions) {
    EvidenceRow r = ANY.row();
    EvidenceRow row =
        new EvidenceRow(
            r.id(),
            r.category(),
            r.sentence(),
            r.instrument(),
            r.abrasiveOrBlades(),
            r.workMaterial(),
            r.quantity(),
            r.numbers(),
            r.unit(),
            r.load(),
            r.speed(),
            r.coolant(),
            r.conditions(),
            List.of(new SourceKey(study)),
            r.locator(),
            r.basis(),
            EvidenceRow.Role.CALIBRATION,
            r.note());
    EvidenceCase one =
        new EvidenceCase(
            ANY.id(),
            row,
            ANY.figure(),
            ANY.comparison(),
            ANY.statement(),
            ANY.first(),
            null,
            ANY.published(),
            ANY.unit(),
            "",
            "");
    double[] samples = new double[100];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = off + conditions * (i % 2 == 0 ? 1 : -1);
    }
    return new Residual(one, FAMILY, samples, 0);
  }

  private static List<Residual> simulated(int studies, int figures, double between, double within) {
    List<Residual> all = new ArrayList<>();
    for (int i = 0; i < studies; i++) {
      double level = between * new Streams(11, 2 * i).normal("level");
      for (int j = 0; j < figures; j++) {
        all.add(
            residual(
                "s" + i, level + within * new Streams(11, 200 * i + 2 * j).normal("figure"), 0));
      }
    }
    return all;
  }

  private static Discrepancy fit(List<Residual> residuals) {
    return DiscrepancyFit.of(residuals).of(FAMILY);
  }

  @Test
  void manyStudiesGiveBackTheSpreadsTheyWereMadeWith() {
    Discrepancy d = fit(simulated(200, 5, 2, 0.4));
    assertEquals(2, d.between(), 0.2);
    assertEquals(0.4, d.within(), 0.03);
    assertEquals(202, d.freedom(), 1e-9);
  }

  @Test
  void noStudyLeavesThePrior() {
    Discrepancy d = fit(List.of());
    assertEquals(1, d.between(), 1e-9);
    assertEquals(2, d.freedom(), 1e-9);
    assertEquals(0, d.studies());
  }

  @Test
  void moreRowsOfOneStudyDoNotNarrowTheSpreadBetweenStudies() {
    List<Residual> few = List.of(residual("a", 2, 0), residual("b", -2, 0));
    List<Residual> many = new ArrayList<>(few);
    for (int i = 0; i < 50; i++) {
      many.add(residual("a", 2, 0));
    }
    assertEquals(fit(few).between(), fit(many).between(), 1e-9);
    assertEquals(fit(few).freedom(), fit(many).freedom(), 1e-9);
  }

  @Test
  void aModelThatIsOffEverywhereIsNotForgiven() {
    Discrepancy d = fit(List.of(residual("a", 3, 0), residual("b", 3, 0), residual("c", 3, 0)));
    assertTrue(d.between() > 2, "three studies three off, all on one side: " + d.between());
  }

  @Test
  void aStudyThatTellsLittleOfItsConditionsSaysLittle() {
    Discrepancy told = fit(List.of(residual("a", 0.1, 0)));
    Discrepancy untold = fit(List.of(residual("a", 0.1, 3)));
    assertTrue(untold.freedom() < told.freedom());
    assertTrue(untold.between() > told.between(), "it must not vouch for a small spread");
    assertTrue(untold.between() <= 1);
  }

  @Test
  void simulatedStudiesLeftOutAreCoveredAndNarrowBandsAreNot() {
    List<Residual> studies = simulated(40, 3, 1.5, 0.3);
    int covered = 0;
    for (Residual left : studies) {
      Discrepancy d = fit(studies.stream().filter(r -> !r.study().equals(left.study())).toList());
      double[] band = new double[500];
      for (int i = 0; i < band.length; i++) {
        Streams s = new Streams(5, i);
        band[i] = d.between() * s.t("b", d.freedom()) + d.within() * s.normal("e");
      }
      Arrays.sort(band);
      covered += left.mean() > band[25] && left.mean() < band[474] ? 1 : 0;
    }
    double share = (double) covered / studies.size();
    assertTrue(share > 0.8 && share < 0.98, "covered " + share);
  }
}
