package kerfwright.planner.evidence.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kerfwright.catalogue.evidence.ConditionKind;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.catalogue.evidence.EvidenceCases;
import kerfwright.planner.evidence.Comparing;
import kerfwright.planner.uncertainty.Draw;
import org.junit.jupiter.api.Test;

class TrialTest {
  private static final Draw TYPICAL = Draw.fixed(1, 1, 1, 1);

  private static EvidenceCase asked(String id) {
    return EvidenceCases.packaged().all().stream()
        .filter(c -> c.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void unitsOfRemovalAgree() {
    Trial trial = Trial.typical(asked("DC032").first(), TYPICAL);
    Figure figure = new Figure(EvidenceCase.Figure.REMOVAL);
    double mm3PerMin = figure.of(trial, "mm3/min");
    assertEquals(mm3PerMin / 60, figure.of(trial, "mm3/s"), 1e-12);
    double density = trial.work().densityKgPerM3() * 1e-3;
    assertEquals(mm3PerMin * density, figure.of(trial, "mg/min"), 1e-9);
    // one minute told, so a mass in grams is the rate in milligrams over a thousand
    assertEquals(figure.of(trial, "mg/min") * 1e-3, figure.of(trial, "g"), 1e-12);
  }

  @Test
  void aBluntingInstrumentRemovesLessThanItsFirstRatePromises() {
    Trial trial = Trial.typical(asked("DC066").first(), TYPICAL);
    double promised = trial.removalM3PerS() * 1800;
    assertTrue(trial.volumeM3(1800) < promised);
    assertEquals(1, trial.volumeM3(1e-6) / (trial.removalM3PerS() * 1e-6), 1e-6);
  }

  @Test
  void factorsOfTheDrawScaleRateAndHeat() {
    EvidenceCase rate = asked("DC027");
    double one = Comparing.figure(rate, rate.first(), TYPICAL);
    double two = Comparing.figure(rate, rate.first(), Draw.fixed(2, 1, 1, 1));
    assertTrue(two > one && two <= 2 * one);
    EvidenceCase dry = asked("V2a");
    double cool = Comparing.figure(dry, dry.first(), TYPICAL);
    double hot = Comparing.figure(dry, dry.first(), Draw.fixed(1, 1, 2, 1));
    assertTrue(hot > cool + 1);
  }

  @Test
  void withNoHeatFromTheCutSprayOnlyCoolsTheTooth() {
    EvidenceCase wet = asked("V3b");
    assertTrue(Comparing.figure(wet, wet.first(), Draw.fixed(1, 1, 1e-9, 1)) < 0);
  }

  @Test
  void aDrawnConditionStaysInItsRange() {
    EvidenceCase one = asked("DC032");
    for (double share : new double[] {0, 0.3, 0.7, 1}) {
      Trial trial = Trial.drawn(one.first(), TYPICAL, kind -> share);
      double load = trial.of(ConditionKind.LOAD);
      assertTrue(load >= 0.5 && load <= 1.5, "load " + load);
    }
  }

  @Test
  void aTurbineSlowsUnderLoadAndAGearedHandpieceDoesNot() {
    assertTrue(Trial.typical(asked("DC047").first(), TYPICAL).rpm() < 350_000);
    assertEquals(40_000, Trial.typical(asked("DC027").first(), TYPICAL).rpm());
  }
}
