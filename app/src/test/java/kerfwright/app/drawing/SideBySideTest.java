package kerfwright.app.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerfwright.app.drawing.strip.AtWork;
import kerfwright.app.drawing.strip.SideBySide;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.material.Materials;
import kerfwright.planner.bench.Bench;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.Stroke;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** Instruments side by side against the millimetres they stand for. */
class SideBySideTest {
  private static final Say SAY = Say.in(Language.ENGLISH);
  private static final double PIXELS = 0.5;
  private static final Bench WIDE = new Bench(Materials.packaged().get("enamel"), 2.1, 1, 1e5, 50);
  private static final Bench SLIM = new Bench(Materials.packaged().get("enamel"), 0.8, 1, 1e5, 50);

  private static final InstrumentProperties DIAMOND =
      WIDE.tool(InstrumentKind.DIAMOND, GritClass.COARSE, null);
  private static final InstrumentProperties BUR = SLIM.tool(InstrumentKind.CARBIDE, null, 6);

  private static double perMm(SvgReader svg) {
    return Double.parseDouble(svg.withClass("depth-scale").get(0).getAttribute("data-per-mm"));
  }

  private static double across(SvgReader svg) {
    List<Svg.Point> head = SvgReader.points(svg.withClass("head").get(0));
    return head.stream().mapToDouble(Svg.Point::x).max().orElseThrow()
        - head.stream().mapToDouble(Svg.Point::x).min().orElseThrow();
  }

  @Test
  void onALayerHeadsAndDepthsAreToOneScale() {
    SideBySide drawn =
        SideBySide.inLayer(
            SAY,
            "t",
            WIDE.layer(),
            List.of(
                AtWork.inLayer("A", DIAMOND, Stroke.AGAINST_ROTATION, 1),
                AtWork.inLayer("B", BUR, Stroke.WITH_ROTATION, 0.25)));
    SvgReader first = new SvgReader(drawn.columns().get(0));
    SvgReader second = new SvgReader(drawn.columns().get(1));
    double perMm = perMm(first);
    assertEquals(perMm, perMm(second));
    assertEquals(2.1 * perMm, across(first), PIXELS);
    assertEquals(0.8 * perMm, across(second), PIXELS);
    assertEquals(1.0 * perMm, SvgReader.width(first.withClass("band").get(0)), PIXELS);
    assertEquals(0.25 * perMm, SvgReader.width(second.withClass("band").get(0)), PIXELS);
    // the two strokes are led opposite ways along the one wall
    assertFalse(first.withClass("towards").isEmpty());
    assertFalse(second.withClass("away").isEmpty());
    SvgReader key = new SvgReader(drawn.key());
    assertTrue(key.root().getTextContent().contains("Enamel"));
    assertEquals(
        1,
        key.all("text").stream().filter(t -> t.getTextContent().contains("mm")).count(),
        "only the bar has a length: a layer without a thickness is given none");
    List<Svg.Point> bar = SvgReader.points(key.withClass("bar").get(0));
    assertEquals(perMm, Math.abs(bar.get(1).x() - bar.get(0).x()), PIXELS);
  }

  @Test
  void atAStepTheStackIsThatOfTheCaseAndOnlyTheInstrumentChanges() {
    CutPlan plan = InventedPlans.metalCeramicAccess();
    PlannedStep step = plan.steps().get(1);
    AtWork planned = AtWork.atStep(plan, step.order());
    SideBySide drawn =
        SideBySide.atStep(
            SAY,
            "t",
            plan,
            List.of(
                planned.with("A", "", DIAMOND, Stroke.AGAINST_ROTATION),
                planned.with("B", "", BUR, Stroke.BRUSHING)));
    for (int i = 0; i < 2; i++) {
      SvgReader svg = new SvgReader(drawn.columns().get(i));
      double perMm = perMm(svg);
      List<Element> layers = svg.withClass("layer");
      for (int l = 0; l < layers.size() - 1; l++) {
        double mm = plan.cutCase().layers().get(l).thickness().typical().millimetres();
        assertEquals(mm * perMm, SvgReader.height(layers.get(l)), PIXELS);
      }
      assertEquals((i == 0 ? 2.1 : 0.8) * perMm, across(svg), PIXELS);
      Element scale = svg.withClass("depth-scale").get(0);
      double zero = Double.parseDouble(scale.getAttribute("data-zero"));
      double tip =
          SvgReader.points(svg.withClass("head").get(0)).stream()
              .mapToDouble(Svg.Point::y)
              .max()
              .orElseThrow();
      assertEquals(step.toMm().typical() * perMm, tip - zero, PIXELS);
    }
  }
}
