package kerfwright.planner.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerfwright.catalogue.evidence.CaseLists;
import kerfwright.catalogue.evidence.Discrepancy;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.catalogue.evidence.EvidenceCases;
import kerfwright.catalogue.evidence.EvidenceRow;
import kerfwright.catalogue.evidence.Family;
import kerfwright.catalogue.evidence.SetUp;
import kerfwright.planner.evidence.figure.Trial;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.uncertainty.Draw;
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
  void onlyValidationThatCanFailIsCounted() {
    long counted =
        REPORT.compared().stream()
            .filter(c -> c.asked().row().role() == EvidenceRow.Role.VALIDATION)
            .filter(c -> !CaseLists.packaged().byConstruction().containsKey(c.asked().id()))
            .filter(c -> c.standing() != Standing.CONDITIONS_UNTOLD)
            .count();
    assertEquals(counted, REPORT.summary().cases());
    assertTrue(REPORT.summary().met() <= REPORT.summary().cases());
  }

  @Test
  void aCaseDoesNotDependOnTheOthers() {
    EvidenceCase last = REPORT.compared().get(REPORT.compared().size() - 1).asked();
    Compared alone =
        new Comparing(
                EvidenceReport.SAMPLES,
                EvidenceReport.HEAT_SAMPLES,
                EvidenceReport.SEED,
                REPORT.discrepancies())
            .compare(last);
    assertEquals(REPORT.compared().get(REPORT.compared().size() - 1), alone);
  }

  @Test
  void anIntervalCatchesItsMiddleAndNotAFigureBeyondIt() {
    Comparing comparing = new Comparing(50, 50, 7, REPORT.discrepancies());
    EvidenceCase rate = find("DC032").asked();
    Compared computed = comparing.compare(rate);
    assertTrue(computed.widthFactor() > 1);
    assertEquals(
        Verdict.INSIDE, comparing.compare(with(rate, computed.computed().typical())).verdict());
    assertEquals(
        Verdict.OUTSIDE, comparing.compare(with(rate, 1.1 * computed.computed().high())).verdict());
    assertEquals(
        Verdict.OUTSIDE, comparing.compare(with(rate, 0.9 * computed.computed().low())).verdict());
  }

  @Test
  void aDirectionTurnedRoundIsWrong() {
    Comparing comparing = new Comparing(20, 20, 7, REPORT.discrepancies());
    Compared right = find("V3-water");
    assertEquals(Verdict.RIGHT, right.verdict());
    assertFalse(comparing.compare(turned(right.asked())).verdict().met());
    Compared rate = find("DC058-load");
    assertEquals(Verdict.RIGHT, rate.verdict());
    assertFalse(comparing.compare(turned(rate.asked())).verdict().met());
  }

  /** Turns every constant and condition a case rests on, and looks whether it ever fails. */
  @Test
  void whatCannotFailHoldsWithOtherConstantsAndConditions() {
    for (String id : CaseLists.packaged().byConstruction().keySet()) {
      EvidenceCase asked = find(id).asked();
      if (asked.comparison().interval()) {
        assertEquals(
            asked.publishedMiddle(),
            find(id).oneLaboratory().typical(),
            0.15 * Math.abs(asked.publishedMiddle()),
            id);
        continue;
      }
      for (double share : new double[] {0.1, 0.4, 0.6, 0.9}) {
        for (double factor : new double[] {0.4, 2.5}) {
          for (double spray : new double[] {0.5, 2}) {
            Draw draw = Draw.fixed(factor, 1 / factor, factor, spray);
            double first = Comparing.figure(asked, Trial.drawn(asked.first(), draw, kind -> share));
            double second =
                Comparing.figure(
                    asked,
                    Trial.drawn(
                        java.util.Objects.requireNonNull(asked.second()), draw, kind -> share));
            boolean order =
                switch (asked.comparison()) {
                  case GREATER -> first >= second;
                  case LESS -> first <= second;
                  default -> Comparing.holds(asked, first, second);
                };
            assertTrue(order, id + " could fail: " + first + ", " + second + " at " + share);
          }
        }
      }
    }
  }

  @Test
  void whatIsTheSameWithoutBeingComputedIsNotCounted() {
    Draw typical = Draw.fixed(1, 1, 1, 1);
    for (Compared c : REPORT.compared()) {
      SetUp second = c.asked().second();
      if (c.asked().comparison() == EvidenceCase.Comparison.SAME
          && second != null
          && c.standing() == Standing.COUNTED) {
        assertTrue(
            Comparing.figure(c.asked(), c.asked().first(), typical)
                != Comparing.figure(c.asked(), second, typical),
            c.asked().id() + " is one figure twice: list it in evidence/by-construction.csv");
      }
    }
  }

  @Test
  void ratiosOfOneStudyAreNarrowerThanItsFigures() {
    Discrepancy d = REPORT.discrepancies().of(Family.ABRASIVE_RATE);
    double ratio = find("P09").widthFactor();
    double figure = find("DC032").widthFactor();
    assertTrue(d.between() > d.within() && ratio < figure, ratio + " against " + figure);
    Estimate narrow = find("DC032").oneLaboratory();
    assertTrue(narrow.high() / narrow.low() < figure);
  }

  @Test
  void coverageIsOfStudiesLeftOut() {
    Coverage all = REPORT.coverage().get(0);
    int figures = REPORT.coverage().stream().skip(1).mapToInt(Coverage::figures).sum();
    assertEquals(figures, all.figures());
    assertTrue(all.covered() <= all.figures() && all.studies() >= Coverage.TESTABLE);
    assertTrue(all.binomial().low() < all.share() && all.share() < all.binomial().high() + 1e-9);
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
