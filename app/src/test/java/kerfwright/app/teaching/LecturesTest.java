package kerfwright.app.teaching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.drawing.TwoDigits;
import kerfwright.app.drawing.cut.ChipDrawing;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.physics.cutting.CrackThreshold;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.physics.cutting.StrokeForces.WorkSide;
import kerfwright.planner.bench.Bench;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What lectures say against the models they are computed by. */
class LecturesTest {
  private static final Say SAY = Say.in(Language.ENGLISH);

  private static Scene scene(Topic topic, String... fields) {
    Map<String, String> sent = new HashMap<>();
    for (int i = 0; i < fields.length; i += 2) {
      sent.put(fields[i], fields[i + 1]);
    }
    return Scene.of(topic, name -> sent.getOrDefault(name, ""));
  }

  /** At every stop of the slider, in layers that crack and that do not. */
  @ParameterizedTest
  @CsvSource({
    "enamel, coarse",
    "enamel, fine",
    "feldspathic-porcelain, extra-coarse",
    "lithium-disilicate, medium",
    "zirconia-3y, coarse",
    "dentine, coarse",
    "gold-alloy, fine"
  })
  void whatTheSliderShowsIsWhatTheModelReturns(String layer, String grit) {
    double before = 0;
    for (double load = 0.05; load <= 5; load += 0.55) {
      Scene scene = scene(Topic.THRESHOLD, "layer", layer, "grit", grit, "load", Scene.plain(load));
      var work = scene.bench().layer().typical();
      CutResult cut =
          scene
              .diamond()
              .cut(
                  work,
                  scene.bench().contact(),
                  new OperatingPoint(
                      scene.bench().loadN(), Math.PI * 1.4e-3 * 160_000 / 60, 50, 1));
      Lecture.Frame frame = Lectures.of(SAY, Topic.THRESHOLD, scene).frames().get(0);
      String says = frame.says().replace('\u00a0', ' ');
      assertTrue(says.contains("carries " + TwoDigits.of(SAY, cut.unitLoadN()) + " N"), says);
      assertTrue(
          says.contains("removes " + TwoDigits.of(SAY, cut.removalM3PerS() * 60e9) + " mm"), says);
      double share = cut.brittleShare();
      String percent = share > 0 && share < 0.005 ? "under 1" : Math.round(100 * share) + "";
      assertTrue(says.contains(" " + percent + " % of the load"), says);
      double limit = CrackThreshold.loadN(work);
      String cracks = limit >= 1000 ? "more than 1 kN" : TwoDigits.of(SAY, limit) + " N";
      assertTrue(
          says.contains("cracks at " + cracks + ";") || says.contains("cracks at " + cracks + "."),
          says);
      boolean beyond = cut.unitLoadN() > limit;
      assertEquals(beyond, x(frame.svg(), "load") > x(frame.svg(), "threshold"), says);
      assertTrue(share >= before, "more load never cracks less");
      before = share;
    }
  }

  /** Across of the first point of a drawn thing. */
  private static double x(String svg, String name) {
    var found =
        java.util.regex.Pattern.compile("d=\"M([0-9.]+) [^\"]*\" class=\"[a-z-]+ " + name + "\"")
            .matcher(svg);
    assertTrue(found.find(), name);
    return Double.parseDouble(found.group(1));
  }

  @Test
  void againstRotationTheChipGrowsAndTheWallPushesBack() {
    Scene scene = scene(Topic.CHIP, "layer", "dentine");
    ChipDrawing.Cut against = Lectures.cut(scene, WorkSide.LEFT);
    ChipDrawing.Cut with = Lectures.cut(scene, WorkSide.RIGHT);
    assertTrue(against.against());
    assertFalse(with.against());
    assertEquals(-against.alongTravelN(), with.alongTravelN(), 1e-12);
    int last = against.thicknessNm().size() - 1;
    assertEquals(0, against.thicknessNm().get(0), 1e-9);
    assertEquals(0, with.thicknessNm().get(last), 1e-9);
    assertEquals(against.thicknessNm().get(last), with.thicknessNm().get(0), 1e-9);
    double sum = 0;
    for (int i = 0; i < last; i++) {
      sum += (against.thicknessNm().get(i) + against.thicknessNm().get(i + 1)) / 2;
    }
    double mean = scene.bench().cut(scene.bur()).chipThicknessM() * 1e9;
    assertEquals(mean, sum / last, 0.001 * mean, "the mean of the curve is the model's chip");
  }

  @Test
  void onOneFeedEachOfManyBladesHasLess() {
    var burs = Lectures.burs(scene(Topic.FLUTES));
    double turnNm = Lectures.FEED_M_PER_S / (160_000 / 60.0) * 1e9;
    burs.forEach(one -> assertEquals(turnNm / one.blades(), one.feedNm(), 1e-9));
    assertEquals(List.of(4, 8, 12, 30), burs.stream().map(one -> one.blades()).toList());
  }

  @ParameterizedTest
  @EnumSource(Topic.class)
  void everyTopicIsShownInEveryLayerItOffersAndReadsItsOwnAddress(Topic topic) {
    for (var layer : topic.layers()) {
      Scene scene =
          scene(topic, "layer", layer.id(), "grit", "fine", "blades", "12", "load", "0.3");
      assertEquals(layer, scene.bench().layer());
      assertFalse(Lectures.of(SAY, topic, scene).frames().isEmpty());
      Map<String, String> fields = new HashMap<>();
      for (String pair : scene.query().split("&")) {
        fields.put(pair.split("=")[0], pair.split("=")[1]);
      }
      assertEquals(scene, Scene.of(topic, name -> fields.getOrDefault(name, "")));
    }
  }

  @Test
  void senselessFieldsAreAsUsual() {
    Scene usual = scene(Topic.PRESSED);
    assertEquals(
        usual,
        scene(
            Topic.PRESSED,
            "layer",
            "dentine",
            "grit",
            "x",
            "load",
            "NaN",
            "rpm",
            "",
            "blades",
            "-"));
    assertEquals(Scene.MOST_N, scene(Topic.CHIP, "load", "1e300").bench().loadN());
    assertEquals(GritClass.COARSE, usual.grit());
  }

  /** Two families of instrument share no scatter: the sentence then names no quicker one. */
  @Test
  void aComparisonSaysOnlyWhatItsBandsBear() {
    Map<String, String> fields =
        Map.of("tool1", "diamond-coarse", "tool2", "carbide-6", "layer", "enamel");
    Comparison apart = Comparison.of(name -> fields.getOrDefault(name, ""));
    assertTrue(apart.tried().get(0).rateOver(apart.tried().get(1)).open());
    assertTrue(apart.sentence(SAY).contains("too wide to say"), apart.sentence(SAY));
    assertFalse(apart.sentence(SAY).contains("quickest"));
    Map<String, String> alike =
        Map.of("tool1", "diamond-coarse", "tool2", "diamond-super-fine", "layer", "enamel");
    Comparison same = Comparison.of(name -> alike.getOrDefault(name, ""));
    assertTrue(same.sentence(SAY).contains("A is quickest"), same.sentence(SAY));
  }

  @Test
  void aComparisonShowsWhatTheBenchComputes() {
    Comparison usual = Comparison.of(name -> "");
    ComparedInstrument first = usual.tried().get(0);
    Bench bench = new Bench(usual.bench().layer(), 1.4, 1, 160_000, 50);
    double rate = bench.rateMm3PerMin(bench.diamond(GritClass.COARSE));
    assertEquals(TwoDigits.of(SAY, rate), usual.rows(SAY).get(0).cells().get(0));
    assertTrue(first.alongTravelN() < 0, "against rotation");
    Map<String, String> with = Map.of("tool1", "carbide-6", "stroke1", "with", "layer", "dentine");
    assertTrue(Comparison.of(n -> with.getOrDefault(n, "")).tried().get(0).alongTravelN() > 0);
    Map<String, String> soft =
        Map.of("tool1", "polymer-6", "tool2", "carbide-6", "layer", "enamel");
    Comparison none = Comparison.of(n -> soft.getOrDefault(n, ""));
    assertEquals("does not cut it", none.rows(SAY).get(0).cells().get(0));
  }

  @Test
  void aComparisonShowsForcesAndSections() {
    Map<String, String> fields =
        Map.of(
            "layer",
            "dentine",
            "tool1",
            "carbide-6",
            "stroke1",
            "against",
            "tool2",
            "carbide-6",
            "stroke2",
            "with",
            "tool3",
            "carbide-12",
            "load3",
            "0.5");
    Comparison three = Comparison.of(name -> fields.getOrDefault(name, ""));
    Side side = three.side(SAY);
    assertEquals(3, side.columns().size());
    Side.Row rim = row(side, "Force along the rim, N");
    Side.Row wall = row(side, "The wall");
    for (int i = 0; i < 3; i++) {
      ComparedInstrument one = three.tried().get(i);
      assertEquals(TwoDigits.of(SAY, one.cut().tangentialN()), rim.cells().get(i));
      assertEquals(i == 1, wall.cells().get(i).startsWith("pulls on"), wall.cells().get(i));
    }
    assertEquals(List.of("1", "1", "0.5"), row(side, "Applied load, N").cells());
    assertTrue(
        three.sentence(SAY).contains("the wall pushes A and C back and pulls B on"),
        three.sentence(SAY));
    assertEquals("1", row(side, "Compared with A").cells().get(0));
    double share = three.tried().get(2).rateMm3PerMin() / three.tried().get(0).rateMm3PerMin();
    assertEquals(share, depthMm(side, 2) / depthMm(side, 0), 0.01, "as deep as it is quick");
    assertEquals(1, depthMm(side, 0), 0.01);
  }

  private static Side.Row row(Side side, String head) {
    return side.rows().stream().filter(one -> one.head().equals(head)).findFirst().orElseThrow();
  }

  private static double depthMm(Side side, int column) {
    String svg = side.columns().get(column).section();
    double perMm = number(svg, "data-per-mm=\"([0-9.]+)\"");
    return number(svg, "<rect [^>]*width=\"([0-9.]+)\"[^>]* class=\"[a-z-]+ band\"") / perMm;
  }

  private static double number(String svg, String pattern) {
    var found = java.util.regex.Pattern.compile(pattern).matcher(svg);
    assertTrue(found.find(), pattern + " in " + svg);
    return Double.parseDouble(found.group(1));
  }

  @Test
  void aNumberGrowsGroupByGroupAndTheDrawingWithIt() {
    NumberLesson empty = NumberLesson.of(SAY, name -> "");
    assertFalse(empty.complete());
    assertEquals("", empty.query());
    Map<String, String> fields =
        Map.of(
            "material",
            "500",
            "shank",
            "314",
            "shape",
            "107",
            "characteristic",
            "006",
            "size",
            "012");
    NumberLesson whole = NumberLesson.of(SAY, name -> fields.getOrDefault(name, ""));
    assertTrue(whole.complete());
    assertEquals("500 314 107 006 012", whole.answer().iso());
    assertFalse(whole.answer().drawings().equals(empty.answer().drawings()));
    assertEquals("5 0 0", whole.parts().get(0).aloud());
    // grit codes are none of a bur's
    assertFalse(whole.parts().get(3).options().containsKey("524"));
    // whatever is offered can be drawn
    for (NumberLesson.Part part : empty.parts()) {
      for (String code : part.options().keySet()) {
        NumberLesson one = NumberLesson.of(SAY, name -> name.equals(part.field()) ? code : "");
        // a round head far wider than it can be long is none; the page says so
        boolean possible = !part.field().equals("size") || Integer.parseInt(code) <= 60;
        assertTrue(!possible || !one.answer().drawings().isEmpty(), part.field() + " " + code);
      }
    }
  }
}
