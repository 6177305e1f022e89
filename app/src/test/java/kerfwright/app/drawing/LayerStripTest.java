package kerfwright.app.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseReader;
import kerfwright.app.drawing.strip.LayerStrip;
import kerfwright.app.drawing.strip.Stage;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.SourceText;
import kerfwright.app.input.TreeReader;
import kerfwright.app.plan.PlanJson;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.material.Material;
import kerfwright.planner.PlanOptions;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.Stroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class LayerStripTest {
  private static final Say SAY = Say.in(Language.ENGLISH);
  private static final double PIXELS = 2;

  static Stream<CutPlan> plans() {
    return Stream.of(
        InventedPlans.metalCeramicAccess(),
        InventedPlans.adhesiveCleanUp(),
        InventedPlans.filmOnly(),
        InventedPlans.deepStack(),
        InventedPlans.bevel());
  }

  private static LayerStrip strip(CutPlan plan) {
    return LayerStrip.of(SAY, "t", plan, LayerStrip.Place.PAGE);
  }

  private static CutPlan example(String name) throws IOException, BadInput {
    Wiring wiring = Wiring.production();
    SourceText text = SourceText.of(Path.of("../examples", name + ".yaml"));
    return wiring
        .plans()
        .plan(
            new CaseReader(wiring.cases()).read(TreeReader.yaml(text), "case"),
            wiring.demoDrawer().read(),
            new PlanOptions(8, 1));
  }

  /** Diameters and depths as drawn on the page against the JSON of the same plan. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "access-metal-ceramic-co-cr",
        "sectioning-metal-ceramic",
        "crown-preparation",
        "adhesive-clean-up",
        "finish-composite",
        "cavity-deep"
      })
  void diametersAndDepthsAreThoseOfTheJson(String name) throws IOException, BadInput {
    CutPlan plan = example(name);
    JsonNode steps = new ObjectMapper().readTree(PlanJson.text(plan)).get("steps");
    int seen = 0;
    for (LayerStrip.Picture picture : strip(plan).stages()) {
      SvgReader svg = new SvgReader(picture.svg());
      Element scale = svg.withClass("depth-scale").get(0);
      double perMm = Double.parseDouble(scale.getAttribute("data-per-mm"));
      double zero = Double.parseDouble(scale.getAttribute("data-zero"));
      boolean side = Boolean.parseBoolean(scale.getAttribute("data-side"));
      double deepest = 0;
      double head = 0;
      for (String order : scale.getAttribute("data-steps").split(" ")) {
        JsonNode step = steps.get(Integer.parseInt(order) - 1);
        deepest = Math.max(deepest, step.get("toMm").get("typical").asDouble());
        head = step.get("instrument").get("diameterMm").asDouble();
        seen++;
      }
      List<Svg.Point> outline = SvgReader.points(svg.withClass("head").get(0));
      double left = outline.stream().mapToDouble(Svg.Point::x).min().orElseThrow();
      double right = outline.stream().mapToDouble(Svg.Point::x).max().orElseThrow();
      double tip = outline.stream().mapToDouble(Svg.Point::y).max().orElseThrow();
      assertEquals(
          head * perMm, right - left, PIXELS, name + " head of " + picture.stage().numbers());
      assertEquals(
          Math.max(deepest, picture.stage().beforeMm()) * perMm,
          (side ? right : tip) - zero,
          PIXELS,
          name + " depth of " + picture.stage().numbers());
    }
    assertEquals(plan.steps().size(), seen);
  }

  @ParameterizedTest
  @MethodSource("plans")
  void allStagesAreOnOneScaleAndLayersAsThickAsTheyAre(CutPlan plan) {
    Set<String> scales = new HashSet<>();
    for (LayerStrip.Picture picture : strip(plan).stages()) {
      SvgReader svg = new SvgReader(picture.svg());
      Element scale = svg.withClass("depth-scale").get(0);
      scales.add(scale.getAttribute("data-per-mm") + " " + scale.getAttribute("data-zero"));
      double perMm = Double.parseDouble(scale.getAttribute("data-per-mm"));
      boolean side = Boolean.parseBoolean(scale.getAttribute("data-side"));
      List<Element> layers = svg.withClass("layer");
      for (int i = 0; i < layers.size() - 1; i++) {
        double mm = plan.cutCase().layers().get(i).thickness().typical().millimetres();
        double drawn = side ? SvgReader.width(layers.get(i)) : SvgReader.height(layers.get(i));
        assertEquals(mm * perMm, drawn, 0.02);
      }
    }
    assertEquals(1, scales.size());
  }

  @Test
  void travelIsDrawnPerWallAndTurnsWithTheStroke() throws IOException, BadInput {
    CutPlan plan = example("access-metal-ceramic-co-cr");
    for (LayerStrip.Picture picture : strip(plan).stages()) {
      SvgReader svg = new SvgReader(picture.svg());
      var steps = picture.stage().steps();
      if (steps.get(steps.size() - 1).stroke() == Stroke.AGAINST_ROTATION) {
        // clockwise from above: the left wall is led away, the right one back
        double away = SvgReader.points(svg.withClass("away").get(0)).get(0).x();
        double towards = SvgReader.points(svg.withClass("towards").get(0)).get(0).x();
        assertTrue(away < towards);
      } else {
        assertTrue(svg.withClass("away").isEmpty());
      }
    }
  }

  @Test
  void operationsAreGroupedByInstrumentInTheirOrder() throws IOException, BadInput {
    CutPlan plan = example("crown-preparation");
    List<Integer> orders = new ArrayList<>();
    for (Stage stage : Stage.of(plan)) {
      stage.steps().forEach(step -> orders.add(step.order()));
      assertEquals(1, stage.steps().stream().map(s -> s.instrument().id()).distinct().count());
    }
    assertEquals(plan.steps().stream().map(s -> s.order()).toList(), orders);
    assertTrue(Stage.of(plan).size() < plan.steps().size());
  }

  @Test
  void aCrownPreparationHasItsFacesAndAnAccessHasNone() throws IOException, BadInput {
    SvgReader faces = new SvgReader(strip(example("crown-preparation")).faces());
    for (String face : List.of("occlusal", "facial", "lingual", "proximal")) {
      assertFalse(faces.withClass("face-" + face).isEmpty(), face);
    }
    assertEquals("", strip(example("access-gold")).faces());
  }

  @Test
  void aRefusedPlanShowsTheStackAndNoStage() {
    LayerStrip strip = strip(InventedPlans.refused());
    assertTrue(strip.stages().isEmpty());
    assertTrue(strip.key().contains("<svg"));
    assertTrue(Files.exists(Path.of("../examples")));
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
}
