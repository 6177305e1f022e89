package kerfwright.app.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import kerfwright.app.Golden;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.Estimate;
import org.junit.jupiter.api.Test;

class PlanTextTest {
  private static final Say ENGLISH = Say.in(Language.ENGLISH);

  private static String plain(String text) {
    return text.replace('\u00A0', ' ');
  }

  @Test
  void aPlanReadsStepByStep() throws IOException {
    Golden.check("plan.txt", plain(PlanText.of(ENGLISH, APlan.throughACrown())));
  }

  @Test
  void aRefusalSaysWhyAndWhatWouldHelp() throws IOException {
    Golden.check("refused.txt", plain(PlanText.of(ENGLISH, APlan.refused())));
  }

  @Test
  void standingCautionsStandUnderPlanAndRefusal() {
    assertTrue(PlanText.of(ENGLISH, APlan.throughACrown()).contains("Planning aid only."));
    assertTrue(PlanText.of(ENGLISH, APlan.refused()).contains("Planning aid only."));
  }

  @Test
  void noLineIsWiderThanATerminal() {
    PlanText.of(ENGLISH, APlan.throughACrown())
        .lines()
        .forEach(l -> assertTrue(l.length() <= 92, l));
  }

  @Test
  void figuresCarryTwoDigitsAndTheirRange() {
    assertEquals(
        "12 s (8.4 to 20)", Figures.withRange(ENGLISH, new Estimate(8.4, 12.3, 20.4), "s"));
    assertEquals("4 s", Figures.withRange(ENGLISH, Estimate.exactly(4), "s"));
    assertEquals("0 min", Figures.withRange(ENGLISH, new Estimate(0, 0.001, 0.002), "min"));
    assertEquals("1500 nm", Figures.withRange(ENGLISH, Estimate.exactly(1523), "nm"));
    assertEquals("318 000 rpm", plain(Figures.rpm(ENGLISH, 318_456)));
    assertEquals("4000 rpm", plain(Figures.rpm(ENGLISH, 4000)));
    assertEquals("0.50 mm (0.40 to 1.0)", Figures.depth(ENGLISH, new Estimate(0.4, 0.5, 1)));
  }

  @Test
  void whatEndsTheSameIsWrittenOnce() {
    assertFalse(Figures.withRange(ENGLISH, new Estimate(1.001, 1.0012, 1.002), "K").contains("to"));
  }
}
