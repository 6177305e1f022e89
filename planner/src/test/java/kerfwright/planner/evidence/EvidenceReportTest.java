package kerfwright.planner.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.catalogue.evidence.EvidenceCases;
import kerfwright.catalogue.evidence.EvidenceRow;
import org.junit.jupiter.api.Test;

class EvidenceReportTest {
  private static final EvidenceReport REPORT = EvidenceReport.compute();

  @Test
  void everyMissHasItsExplanation() {
    List<String> unexplained =
        REPORT.compared().stream()
            .filter(c -> !c.verdict().met() && c.asked().explanation().isBlank())
            .map(c -> c.asked().id())
            .toList();
    assertEquals(List.of(), unexplained, "say why in evidence/cases.csv");
  }

  @Test
  void everyCaseIsComputedAndFinite() {
    assertEquals(EvidenceCases.packaged().all().size(), REPORT.compared().size());
    for (Compared c : REPORT.compared()) {
      assertTrue(Double.isFinite(c.computed().low()), c.asked().id());
      assertTrue(Double.isFinite(c.computed().high()), c.asked().id());
      assertTrue(c.holdsShare() >= 0 && c.holdsShare() <= 1, c.asked().id());
    }
  }

  @Test
  void figuresStayWithinWhatTheirKindAllows() {
    for (Compared c : REPORT.compared()) {
      double low = c.computed().low();
      double high = c.computed().high();
      boolean sane =
          switch (c.asked().figure()) {
            case REMOVAL, SPEED_UNDER_LOAD, SPECIFIC_ENERGY, CHIP_THICKNESS, ROUGHNESS -> low > 0;
            case TANGENTIAL_FORCE -> low > 0 && high < 10;
            case POWER_SPEED, USE_LOSS, STERILISATION_LOSS -> low >= 0 && high <= 100;
            case BRITTLE_SHARE -> low >= 0 && high <= 1;
            case PULP_RISE -> low > -27 && high < 60;
            case SURFACE_RISE -> low > -27 && high < 1000;
            case ROOT_RISE -> low > -27 && high < 200;
            case MOUTH_HEAT -> low > 35 && high < 60;
          };
      assertTrue(sane, c.asked().id() + ": " + c.computed());
    }
  }

  @Test
  void onlyValidationIsCounted() {
    long validation =
        REPORT.compared().stream()
            .filter(c -> c.asked().row().role() == EvidenceRow.Role.VALIDATION)
            .count();
    assertEquals(validation, REPORT.summary().cases());
    assertTrue(REPORT.summary().met() <= REPORT.summary().cases());
  }

  @Test
  void aCaseDoesNotDependOnTheOthers() {
    EvidenceCase last = REPORT.compared().get(REPORT.compared().size() - 1).asked();
    Compared alone =
        new Comparing(EvidenceReport.SAMPLES, EvidenceReport.HEAT_SAMPLES, EvidenceReport.SEED)
            .compare(last);
    assertEquals(REPORT.compared().get(REPORT.compared().size() - 1), alone);
  }

  @Test
  void anIntervalCatchesItsMiddleAndNotAFigureBeyondIt() {
    Comparing comparing = new Comparing(50, 50, 7);
    EvidenceCase rate = find("DC032").asked();
    Compared computed = comparing.compare(rate);
    assertTrue(computed.widthFactor() > 1 && computed.widthFactor() < 30);
    assertEquals(
        Verdict.INSIDE, comparing.compare(with(rate, computed.computed().typical())).verdict());
    assertEquals(
        Verdict.OUTSIDE, comparing.compare(with(rate, 1.1 * computed.computed().high())).verdict());
    assertEquals(
        Verdict.OUTSIDE, comparing.compare(with(rate, 0.9 * computed.computed().low())).verdict());
  }

  @Test
  void aDirectionTurnedRoundIsWrong() {
    Comparing comparing = new Comparing(20, 20, 7);
    Compared right = find("V3-water");
    assertEquals(Verdict.RIGHT, right.verdict());
    assertFalse(comparing.compare(turned(right.asked())).verdict().met());
    Compared rate = find("DC058-load");
    assertEquals(Verdict.RIGHT, rate.verdict());
    assertFalse(comparing.compare(turned(rate.asked())).verdict().met());
  }

  private static Compared find(String id) {
    return REPORT.compared().stream()
        .filter(c -> c.asked().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static EvidenceCase with(EvidenceCase c, double published) {
    return new EvidenceCase(
        c.id(),
        c.row(),
        c.figure(),
        c.comparison(),
        c.statement(),
        c.first(),
        c.second(),
        new kerfwright.catalogue.table.Numbers(null, published, null),
        c.unit(),
        "test",
        "");
  }

  private static EvidenceCase turned(EvidenceCase c) {
    return new EvidenceCase(
        c.id(),
        c.row(),
        c.figure(),
        c.comparison(),
        c.statement(),
        java.util.Objects.requireNonNull(c.second()),
        c.first(),
        c.published(),
        c.unit(),
        c.remark(),
        "");
  }
}
