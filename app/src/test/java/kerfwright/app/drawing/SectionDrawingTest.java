package kerfwright.app.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.material.Material;
import kerfwright.planner.plan.CutPlan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

class SectionDrawingTest {
  private static final Say SAY = Say.in(Language.ENGLISH);

  static Stream<CutPlan> plans() {
    return Stream.of(
        InventedPlans.metalCeramicAccess(),
        InventedPlans.adhesiveCleanUp(),
        InventedPlans.filmOnly(),
        InventedPlans.deepStack(),
        InventedPlans.bevel(),
        InventedPlans.refused());
  }

  @ParameterizedTest
  @MethodSource("plans")
  void layersAreAsTallAsTheyAreThick(CutPlan plan) {
    SvgReader svg = new SvgReader(SectionDrawing.draw(SAY, "t", plan));
    List<Element> layers = svg.withClass("layer");
    assertEquals(plan.cutCase().layers().size(), layers.size());
    double perMm = perMm(plan, layers);
    for (int i = 0; i < layers.size(); i++) {
      double mm = plan.cutCase().layers().get(i).thickness().typical().millimetres();
      assertEquals(mm * perMm, SvgReader.height(layers.get(i)), 0.02);
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void bandsOfStepsLieWithinTheStackAtTheirDepths(CutPlan plan) {
    SvgReader svg = new SvgReader(SectionDrawing.draw(SAY, "t", plan));
    List<Element> layers = svg.withClass("layer");
    double top = SvgReader.number(layers.get(0), "y");
    double perMm = perMm(plan, layers);
    List<Element> bands = svg.withClass("band");
    assertEquals(plan.steps().size(), bands.size());
    assertEquals(plan.steps().size(), svg.withClass("step").size());
    for (int i = 0; i < bands.size(); i++) {
      double from = plan.steps().get(i).fromMm().typical();
      double to = plan.steps().get(i).toMm().typical();
      assertEquals(top + from * perMm, SvgReader.number(bands.get(i), "y"), 0.02);
      assertEquals((to - from) * perMm, SvgReader.height(bands.get(i)), 0.02);
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void noTwoLinesOfWordsOverlap(CutPlan plan) {
    List<Element> words = new SvgReader(SectionDrawing.draw(SAY, "t", plan)).all("text");
    for (int i = 0; i < words.size(); i++) {
      for (int j = 0; j < i; j++) {
        List<Svg.Point> a = SvgReader.points(words.get(i));
        List<Svg.Point> b = SvgReader.points(words.get(j));
        boolean apart =
            a.get(1).x() <= b.get(0).x() + 1
                || b.get(1).x() <= a.get(0).x() + 1
                || a.get(1).y() <= b.get(0).y() + 1
                || b.get(1).y() <= a.get(0).y() + 1;
        assertTrue(apart, words.get(i).getTextContent() + " over " + words.get(j).getTextContent());
      }
    }
  }

  @Test
  void theOpeningIsAsWideAsItIsWhereTheDrawingSaysSo() {
    CutPlan plan = InventedPlans.metalCeramicAccess();
    String drawn = SectionDrawing.draw(SAY, "t", plan);
    assertTrue(drawn.contains("width too"));
    SvgReader svg = new SvgReader(drawn);
    double perMm = perMm(plan, svg.withClass("layer"));
    assertEquals(3.0, SvgReader.width(svg.withClass("opening").get(0)) / perMm, 0.01);
    assertTrue(SectionDrawing.draw(SAY, "t", InventedPlans.filmOnly()).contains("width is not"));
  }

  @Test
  void theArrowDownToThePulpIsAsLongAsTheDentineLeft() {
    CutPlan plan = InventedPlans.metalCeramicAccess();
    SvgReader svg = new SvgReader(SectionDrawing.draw(SAY, "t", plan));
    double perMm = perMm(plan, svg.withClass("layer"));
    double floor =
        SvgReader.points(svg.withClass("wall").get(0)).stream()
            .mapToDouble(Svg.Point::y)
            .max()
            .orElseThrow();
    double pulp = SvgReader.points(svg.withClass("pulp-wall").get(0)).get(0).y();
    assertEquals(1.25, (pulp - floor) / perMm, 0.01);
    assertTrue(svg.root().getTextContent().contains("RDT 1.3\u00A0mm"));
    assertEquals(2, svg.withClass("remaining").size());
  }

  @Test
  void whatIsKeptIsMarkedAtItsDepth() {
    CutPlan plan = InventedPlans.metalCeramicAccess();
    SvgReader svg = new SvgReader(SectionDrawing.draw(SAY, "t", plan));
    List<Element> layers = svg.withClass("layer");
    double y = SvgReader.points(svg.withClass("keep").get(0)).get(0).y();
    double kept = (y - SvgReader.number(layers.get(0), "y")) / perMm(plan, layers);
    assertEquals(1.2 + 0.4 + 0.05 + 3.0 - 0.5, kept, 0.01);
  }

  @Test
  void aRefusedPlanShowsTheStackAndNoCut() {
    SvgReader svg = new SvgReader(SectionDrawing.draw(SAY, "t", InventedPlans.refused()));
    assertEquals(4, svg.withClass("layer").size());
    assertTrue(svg.withClass("band").isEmpty());
    assertTrue(svg.withClass("opening").isEmpty());
    assertTrue(svg.root().getTextContent().contains("No steps"));
    assertFalse(svg.root().getTextContent().contains("RDT"));
  }

  @Test
  void hatchingsDifferBetweenTheGroupsAndTurnBetweenEqualNeighbours() {
    Set<String> seen = new HashSet<>();
    for (Hatch hatch : Hatch.values()) {
      assertTrue(seen.add(hatch.path(0, 0, 100, 60, false)), hatch + " looks like another");
      assertTrue(seen.add(hatch.path(0, 0, 100, 60, true)), hatch + " turned looks the same");
    }
    assertEquals(
        Hatch.LATTICE,
        Hatch.of(
            InventedPlans.layer("zirconia-3y", "zirconia", Material.Group.CERAMIC, 1).material()));
  }

  private static double perMm(CutPlan plan, List<Element> layers) {
    double total =
        plan.cutCase().layers().stream()
            .mapToDouble(l -> l.thickness().typical().millimetres())
            .sum();
    return layers.stream().mapToDouble(SvgReader::height).sum() / total;
  }
}
