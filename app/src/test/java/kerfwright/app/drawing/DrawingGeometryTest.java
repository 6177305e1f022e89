package kerfwright.app.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import kerfwright.app.drawing.cut.StrokeDiagram;
import kerfwright.app.drawing.cut.StrokeDiagram.Site;
import kerfwright.app.drawing.cut.StrokeGeometry;
import kerfwright.app.drawing.instrument.AbrasiveSurface;
import kerfwright.app.drawing.instrument.BladeSection;
import kerfwright.app.drawing.instrument.InstrumentDrawing;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.planner.plan.Stroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class DrawingGeometryTest {
  private static final Say SAY = Say.in(Language.ENGLISH);

  @ParameterizedTest
  @EnumSource(ShapeFamily.class)
  void anInstrumentIsDrawnInItsOwnProportions(ShapeFamily shape) {
    InstrumentProperties i = InventedPlans.diamond(shape, shape.label(), GritClass.COARSE, 1.6, 6);
    SvgReader svg = new SvgReader(InstrumentDrawing.full(SAY, "i", i));
    Element head = svg.withClass("head").get(0);
    Element shank = svg.withClass("shank").get(0);
    double right = SvgReader.points(shank).stream().mapToDouble(Svg.Point::x).max().orElseThrow();
    double left = SvgReader.points(head).stream().mapToDouble(Svg.Point::x).min().orElseThrow();
    double perMm = (right - left) / 21;
    assertEquals(1.6, SvgReader.height(head) / perMm, 0.005);
    assertEquals(1.6, SvgReader.height(shank) / perMm, 0.005);
    if (shape != ShapeFamily.ROUND) {
      assertEquals(6, SvgReader.width(head) / perMm, 0.005);
    }
    Element enlarged = svg.withClass("enlarged").get(0);
    assertEquals(
        SvgReader.width(head) / SvgReader.height(head),
        SvgReader.width(enlarged) / SvgReader.height(enlarged),
        0.01);
  }

  @Test
  void smallDrawingsShareOneScale() {
    for (double head : new double[] {0.8, 1.6, 3.0, 5.0}) {
      SvgReader svg =
          new SvgReader(
              InstrumentDrawing.small(
                  SAY,
                  "i",
                  InventedPlans.diamond(ShapeFamily.CYLINDER, "c", GritClass.FINE, head, 4)));
      assertEquals(7 * head, SvgReader.height(svg.withClass("head").get(0)), 0.02);
    }
  }

  @Test
  void aLongShankIsCutShortInTheSmallDrawing() {
    SvgReader svg =
        new SvgReader(
            InstrumentDrawing.small(
                SAY,
                "i",
                InventedPlans.instrument(
                    InstrumentKind.STEEL,
                    ShapeFamily.ROUND,
                    "round",
                    null,
                    8,
                    2.3,
                    2.3,
                    ShankType.HP,
                    44.5)));
    assertEquals(157, SvgReader.number(svg.root(), "width"), 1e-9);
  }

  @ParameterizedTest
  @EnumSource(GritClass.class)
  void theRingStandsBesideItsName(GritClass grit) {
    String drawn =
        InstrumentDrawing.full(
            SAY, "i", InventedPlans.diamond(ShapeFamily.FLAME, "flame", grit, 1.2, 6));
    assertTrue(drawn.contains(">ring: " + grit.ring() + "<"));
    assertEquals(1, new SvgReader(drawn).withClass("d-ring").size());
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 4, 6, 7, 8, 12, 16, 30, 40})
  void aBurHasItsRealNumberOfBlades(int blades) {
    SvgReader svg = new SvgReader(BladeSection.draw(SAY, "b", blades, 1.2));
    assertEquals(blades, svg.withClass("blade").size());
    Element rim = svg.withClass("rim").get(0);
    Element section = svg.withClass("section").get(0);
    double r = SvgReader.number(rim, "r");
    long edges =
        SvgReader.points(section).stream()
            .filter(
                p ->
                    Math.abs(
                            Math.hypot(
                                    p.x() - SvgReader.number(rim, "cx"),
                                    p.y() - SvgReader.number(rim, "cy"))
                                - r)
                        < 0.02)
            .distinct()
            .count();
    assertEquals(blades, edges, "edges on the rim");
  }

  @ParameterizedTest
  @CsvSource({"4, -10", "6, -10", "6, 8", "12, -20", "30, 0", "40, -5"})
  void theFaceOfABladeStandsAtItsRakeAngle(int blades, double rakeDeg) {
    BladeSection.Settings settings = new BladeSection.Settings(rakeDeg, 15, 0.5, 0.45);
    double core = BladeSection.coreOfRadius(blades, settings);
    List<Svg.Point> blade = BladeSection.blade(0, blades, core, settings);
    Svg.Point foot = blade.get(0);
    Svg.Point edge = blade.get(1);
    // edge straight up: ahead, in the turning sense, is to the right
    double ahead = foot.x() - edge.x();
    double inward = foot.y() - edge.y();
    assertEquals(rakeDeg, -Math.toDegrees(Math.atan2(ahead, inward)), 1e-6);
  }

  @Test
  void fewerBladesLeaveMoreRoomInTheFlutes() {
    double[] cores =
        IntStream.of(6, 8, 12, 30, 40)
            .mapToDouble(n -> BladeSection.coreOfRadius(n, BladeSection.Settings.PROJECT))
            .toArray();
    for (int i = 1; i < cores.length; i++) {
      assertTrue(cores[i] > cores[i - 1]);
    }
  }

  @ParameterizedTest
  @EnumSource(GritClass.class)
  void grainsHaveTheSizeOfTheirClass(GritClass grit) {
    SvgReader svg = new SvgReader(AbrasiveSurface.draw(SAY, "a", grit, 3));
    String[] grains = svg.withClass("grains").get(0).getAttribute("d").split("Z");
    assertTrue(grains.length >= 5, "only " + grains.length);
    double low = grit.particleSize().low().millimetres() * AbrasiveSurface.PER_MM;
    double high = grit.particleSize().high().millimetres() * AbrasiveSurface.PER_MM;
    for (String grain : grains) {
      List<Svg.Point> corners = SvgReader.path(grain);
      double longest = 0;
      for (Svg.Point a : corners) {
        for (Svg.Point b : corners) {
          longest = Math.max(longest, Math.hypot(a.x() - b.x(), a.y() - b.y()));
        }
      }
      assertTrue(
          longest > low - 0.05 && longest < high + 0.05, longest + " of " + low + ", " + high);
    }
    assertEquals(
        0.1 * AbrasiveSurface.PER_MM, SvgReader.width(svg.withClass("scale").get(0)), 0.02);
  }

  @Test
  void theSameSeedGivesTheSameGrainsAndAnotherSeedOthers() {
    String one = AbrasiveSurface.draw(SAY, "a", GritClass.COARSE, 1);
    assertEquals(one, AbrasiveSurface.draw(SAY, "a", GritClass.COARSE, 1));
    assertTrue(!one.equals(AbrasiveSurface.draw(SAY, "a", GritClass.COARSE, 2)));
  }

  /** Work on the left of travel is against rotation for clockwise turning seen from the shank. */
  @ParameterizedTest
  @EnumSource(Site.class)
  void againstRotationHasTheWorkOnItsLeftAndWithRotationOnItsRight(Site site) {
    for (Stroke stroke : List.of(Stroke.AGAINST_ROTATION, Stroke.WITH_ROTATION)) {
      SvgReader svg = new SvgReader(StrokeDiagram.draw(SAY, "s", stroke, site));
      List<Svg.Point> travel = SvgReader.points(svg.withClass("travel").get(0));
      Element tool = svg.withClass("instrument").get(0);
      Svg.Point centre = new Svg.Point(SvgReader.number(tool, "cx"), SvgReader.number(tool, "cy"));
      Svg.Point chip = middle(SvgReader.points(svg.withClass("chip").get(0)));
      double tx = travel.get(1).x() - travel.get(0).x();
      double ty = travel.get(1).y() - travel.get(0).y();
      // y counts downwards, so a negative cross product is the left-hand side
      double cross = tx * (chip.y() - centre.y()) - ty * (chip.x() - centre.x());
      assertEquals(stroke == Stroke.AGAINST_ROTATION, cross < 0, stroke + " " + site);
      // the chip is cut at the front of the instrument
      assertTrue(tx * (chip.x() - centre.x()) + ty * (chip.y() - centre.y()) > 0);
      // a blade at the wall moves to the right here; the wall acts the other way
      List<Svg.Point> force = SvgReader.points(svg.withClass("force").get(0));
      boolean pushesBack = (force.get(1).x() - force.get(0).x()) * tx < 0;
      assertEquals(stroke == Stroke.AGAINST_ROTATION, pushesBack);
      String text = svg.root().getTextContent();
      assertEquals(pushesBack, text.contains("pushes back"));
      assertEquals(!pushesBack, text.contains("pulls on"));
      assertEquals(pushesBack, text.contains("thin to thick"));
      assertTurnsClockwise(svg, centre);
    }
  }

  private static void assertTurnsClockwise(SvgReader svg, Svg.Point centre) {
    List<Svg.Point> arc = SvgReader.points(svg.withClass("turning").get(0));
    Svg.Point tip = SvgReader.points(svg.withClass("turning-head").get(0)).get(0);
    Svg.Point last = arc.get(arc.size() - 1);
    for (int i = 1; i < arc.size(); i++) {
      assertTrue(cross(centre, arc.get(i - 1), arc.get(i)) > 0, "clockwise with y downwards");
    }
    assertTrue(cross(centre, arc.get(arc.size() - 3), tip) > 0 && tip.y() < last.y() + 0.1);
  }

  @ParameterizedTest
  @CsvSource({"true, true", "true, false", "false, true", "false, false"})
  void theChipIsNothingAtTheFinishedWallAndThickestAtTheUncutSurface(
      boolean inside, boolean against) {
    StrokeGeometry g = new StrokeGeometry(inside, against);
    double last = -1;
    for (int i = 0; i <= 50; i++) {
      double angle = g.entry() + (g.exit() - 0.004 - g.entry()) * i / 50;
      double h = g.thickness(angle);
      // on a hollow wall the chip passes its greatest thickness just before a quarter turn
      assertTrue(h >= last - 0.12, "grows from the wall on: " + last + " then " + h);
      last = h;
    }
    assertEquals(0, g.thickness(g.entry()), 0.05);
    assertTrue(last > 0.6 * StrokeGeometry.FEED && last <= StrokeGeometry.FEED + 1e-9);
  }

  /** Two circles of one radius a step apart; for a small step this is f sin phi of milling. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void theChipHasTheThicknessBetweenTwoCircles(boolean inside) {
    StrokeGeometry g = new StrokeGeometry(inside, true);
    double half = StrokeGeometry.FEED / g.pathRadius() / 2;
    double step = 2 * g.pathRadius() * Math.sin(half);
    double turn = inside ? half : -half;
    for (double angle = 0.1; angle < 0.9; angle += 0.1) {
      double cos = Math.cos(angle + turn);
      double expected =
          step * Math.sin(angle + turn)
              + StrokeGeometry.TOOL
              - Math.sqrt(StrokeGeometry.TOOL * StrokeGeometry.TOOL - step * step * cos * cos);
      assertEquals(expected, g.thickness(angle), 1e-9);
    }
  }

  private static double cross(Svg.Point o, Svg.Point a, Svg.Point b) {
    return (a.x() - o.x()) * (b.y() - o.y()) - (a.y() - o.y()) * (b.x() - o.x());
  }

  private static Svg.Point middle(List<Svg.Point> points) {
    return new Svg.Point(
        points.stream().mapToDouble(Svg.Point::x).average().orElseThrow(),
        points.stream().mapToDouble(Svg.Point::y).average().orElseThrow());
  }
}
