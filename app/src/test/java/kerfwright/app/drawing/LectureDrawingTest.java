package kerfwright.app.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerfwright.app.drawing.cut.ChipDrawing;
import kerfwright.app.drawing.cut.GrainDrawing;
import kerfwright.app.drawing.cut.ThresholdDrawing;
import kerfwright.app.drawing.instrument.FluteDrawing;
import kerfwright.app.drawing.instrument.GritDrawing;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.physics.cutting.CrackThreshold;
import kerfwright.physics.cutting.GrainMark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

/** The drawings of lectures against the figures they are made of. */
class LectureDrawingTest {
  private static final Say SAY = Say.in(Language.ENGLISH);
  private static final double SURFACE = 170;
  private static final double HALF_UNIT = 0.02;

  private static Material layer(String id) {
    return Materials.packaged().get(id);
  }

  private static GrainMark mark(String layer, double ofThreshold) {
    var work = layer(layer).typical();
    return GrainMark.of(work, ofThreshold * CrackThreshold.loadN(work));
  }

  private static List<Svg.Point> reach(SvgReader svg, String name) {
    return SvgReader.points(svg.withClass(name).get(0));
  }

  private static double lowest(SvgReader svg, String name) {
    return reach(svg, name).stream().mapToDouble(Svg.Point::y).max().orElseThrow();
  }

  /** The tip stands as deep as the model says, at the scale of the bar. */
  @ParameterizedTest
  @ValueSource(strings = {"enamel", "feldspathic-porcelain", "zirconia-3y"})
  void theTipStandsAsDeepAsTheModelSays(String layer) {
    GrainMark mark = mark(layer, 0.5);
    double window = GrainDrawing.windowUm(mark(layer, 2));
    SvgReader svg =
        new SvgReader(
            GrainDrawing.draw(SAY, "g", layer(layer), mark, window, GrainDrawing.Phase.PRESSED));
    double depth = lowest(svg, "grain") - SURFACE;
    assertEquals(mark.depthM() * 1e6 * 600 / window, depth, HALF_UNIT);
    List<Svg.Point> bar = reach(svg, "scale");
    double long_ = Math.abs(bar.get(0).x() - bar.get(1).x());
    String said = svg.withClass("d-quiet").get(0).getTextContent().replaceAll("[^0-9.]", "");
    assertEquals(Double.parseDouble(said) * 600 / window, long_, HALF_UNIT);
  }

  /**
   * The dish has the depth and the section of the crack: a parabola holds two thirds of its box.
   */
  @Test
  void theDishHasTheDepthAndTheSectionOfTheCrack() {
    GrainMark mark = mark("enamel", 2);
    double window = GrainDrawing.windowUm(mark);
    double perM = 1e6 * 600 / window;
    double half = GrainDrawing.halfCrackM(mark);
    assertEquals(mark.crackedM2(), 4.0 / 3 * half * mark.crackDepthM(), 1e-18);
    SvgReader svg =
        new SvgReader(
            GrainDrawing.draw(SAY, "g", layer("enamel"), mark, window, GrainDrawing.Phase.CHIPPED));
    String d = svg.withClass("dish").get(0).getAttribute("d");
    List<Double> numbers =
        java.util.regex.Pattern.compile("-?[0-9.]+")
            .matcher(d)
            .results()
            .map(one -> Double.valueOf(one.group()))
            .toList();
    assertEquals(2 * half * perM, numbers.get(4) - numbers.get(0), 2 * HALF_UNIT);
    // a parabola passes half as deep as its control point
    assertEquals(mark.crackDepthM() * perM, (numbers.get(3) - SURFACE) / 2, HALF_UNIT);
  }

  /** What is pushed aside and what leaves add up to the groove. */
  @Test
  void ridgesAndChipAddUpToTheGroove() {
    GrainMark mark = GrainMark.of(layer("dentine").typical(), 0.06);
    SvgReader svg =
        new SvgReader(
            GrainDrawing.draw(
                SAY,
                "g",
                layer("dentine"),
                mark,
                GrainDrawing.windowUm(mark),
                GrainDrawing.Phase.DRAGGED));
    double groove = area(reach(svg, "groove"));
    double ridges =
        svg.withClass("ridge").stream().mapToDouble(e -> area(SvgReader.points(e))).sum();
    Element chip = svg.withClass("chip").get(0);
    double left = Math.pow(SvgReader.number(chip, "width"), 2);
    assertEquals(groove, ridges + left, 0.01 * groove);
    assertEquals(mark.chipShare(), left / groove, 0.01);
  }

  private static double area(List<Svg.Point> corners) {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      Svg.Point a = corners.get(i);
      Svg.Point b = corners.get((i + 1) % corners.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return Math.abs(twice) / 2;
  }

  /** The curve is the thickness; the arrow is the force, and its side is its sign. */
  @ParameterizedTest
  @ValueSource(doubles = {-0.4, 0.4, -1.5})
  void theChipCurveAndTheForceAreToScale(double alongN) {
    List<Double> nm = List.of(0.0, 40.0, 100.0);
    ChipDrawing.Cut cut = new ChipDrawing.Cut(6, 1.4, 0.05, 0.38, nm, alongN);
    SvgReader svg = new SvgReader(ChipDrawing.draw(SAY, "c", layer("dentine"), cut, true));
    List<Svg.Point> curve = reach(svg, "chip-line");
    double full = curve.get(0).y() - curve.get(2).y();
    assertEquals(0.4, (curve.get(0).y() - curve.get(1).y()) / full, 0.001);
    double force = svg.withClass("force").isEmpty() ? 0 : wide(reach(svg, "force"));
    // the line ends within the head of the arrow
    double head = 0.8 * Svg.BOLD_HEAD;
    assertEquals(Math.abs(alongN) * ChipDrawing.perNewton(alongN), force + head, HALF_UNIT);
    List<Svg.Point> travel = reach(svg, "travel");
    boolean right = travel.get(1).x() > travel.get(0).x();
    assertEquals(alongN < 0, right, "against rotation the travel is to the right up here");
  }

  private static double wide(List<Svg.Point> points) {
    return Math.abs(points.get(0).x() - points.get(1).x());
  }

  @Test
  void everyBarOfTheFlutesIsAsTallAsItsFeed() {
    List<FluteDrawing.Bur> burs =
        List.of(
            new FluteDrawing.Bur(4, 90),
            new FluteDrawing.Bur(12, 30),
            new FluteDrawing.Bur(30, 12));
    SvgReader svg = new SvgReader(FluteDrawing.draw(SAY, "f", burs, 12));
    List<Element> bars = svg.withClass("feed");
    for (int i = 0; i < burs.size(); i++) {
      assertEquals(
          FluteDrawing.TALL * burs.get(i).feedNm() / 90,
          SvgReader.number(bars.get(i), "height"),
          HALF_UNIT);
    }
    assertEquals(3, svg.withClass("bur").size());
  }

  @Test
  void everyGrainIsAsLargeAsItsClassAndStandsOutByItsShare() {
    SvgReader svg = new SvgReader(GritDrawing.draw(SAY, "r", 0.4, GritClass.FINE));
    List<Element> grains = svg.withClass("grain");
    GritClass[] classes = GritClass.values();
    assertEquals(classes.length, grains.size());
    for (int i = 0; i < classes.length; i++) {
      double um = classes[i].particleSize().typical().metres() * 1e6;
      List<Svg.Point> points = SvgReader.points(grains.get(i));
      double top = points.stream().mapToDouble(Svg.Point::y).min().orElseThrow();
      double bottom = points.stream().mapToDouble(Svg.Point::y).max().orElseThrow();
      assertEquals(um * GritDrawing.PER_UM, bottom - top, 2 * HALF_UNIT);
      assertEquals(0.4, (170 - top) / (bottom - top), 0.01);
    }
  }

  /** Load and threshold stand in their order on one scale, and the bar is the share. */
  @Test
  void loadAndThresholdStandInTheirOrder() {
    SvgReader below = new SvgReader(ThresholdDrawing.draw(SAY, "t", 0.05, 0.5, 0.25));
    double limit = reach(below, "threshold").get(0).x();
    assertTrue(tip(below) < limit);
    SvgReader above = new SvgReader(ThresholdDrawing.draw(SAY, "t", 0.9, 0.5, 0.75));
    assertTrue(tip(above) > limit);
    double all = SvgReader.number(below.withClass("all-load").get(0), "width");
    double cracking = SvgReader.number(below.withClass("cracking").get(0), "width");
    assertEquals(0.25, cracking / all, 0.001);
    double decade = (limit - tip(below)); // 0.05 to 0.5 is one decade
    List<Svg.Point> axis = reach(below, "axis");
    assertEquals(wide(axis) / 4, decade, 0.1);
  }

  private static double tip(SvgReader svg) {
    return reach(svg, "load").get(0).x();
  }
}
