package kerfwright.app.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.HeatCurve;
import org.junit.jupiter.api.Test;

class HeatChartTest {
  private static final Say SAY = Say.in(Language.ENGLISH);

  @Test
  void theCurveStandsAtItsHeightBetweenZeroAndTheLimit() {
    HeatCurve curve = InventedPlans.heating();
    SvgReader svg = new SvgReader(HeatChart.draw(SAY, "h", curve, 5.5, List.of(0.0, 42.0)));
    double limit = SvgReader.points(svg.withClass("limit").get(0)).get(0).y();
    List<Svg.Point> line = SvgReader.points(svg.withClass("typical").get(0));
    double zero = line.get(0).y();
    double peak = line.stream().mapToDouble(Svg.Point::y).min().orElseThrow();
    assertEquals(Collections.max(curve.typicalK()) / 5.5, (zero - peak) / (zero - limit), 0.002);
    assertTrue(line.size() < 400, "thinned for print, got " + line.size());
  }

  @Test
  void coolingBelowBodyTemperatureStaysInTheChart() {
    String drawn = HeatChart.draw(SAY, "h", InventedPlans.coolingBelowZero(), 5.5, List.of());
    assertEquals(1, new SvgReader(drawn).withClass("zero").size());
    assertTrue(drawn.contains("\u22125"));
  }

  @Test
  void everyStepIsMarkedWhereItBegins() {
    SvgReader svg =
        new SvgReader(
            HeatChart.draw(SAY, "h", InventedPlans.heating(), 5.5, List.of(0.0, 90.0, 91.0)));
    var marks = svg.withClass("step-start");
    assertEquals(3, marks.size());
    double left = SvgReader.points(marks.get(0)).get(2).x();
    double half = SvgReader.points(marks.get(1)).get(2).x();
    assertEquals(left + (310 - 34) / 2.0, half, 0.02);
  }

  @Test
  void aPeakOfOneSampleIsNotThinnedAway() {
    List<Double> time = new ArrayList<>();
    List<Double> flat = new ArrayList<>();
    for (int i = 0; i < 5000; i++) {
      time.add(i * 0.1);
      flat.add(i == 3333 ? 4.0 : 1.0);
    }
    SvgReader svg =
        new SvgReader(
            HeatChart.draw(SAY, "h", new HeatCurve(time, flat, flat, flat), 5.5, List.of()));
    double limit = SvgReader.points(svg.withClass("limit").get(0)).get(0).y();
    List<Svg.Point> line = SvgReader.points(svg.withClass("typical").get(0));
    double peak = line.stream().mapToDouble(Svg.Point::y).min().orElseThrow();
    double one = line.get(0).y();
    assertEquals(3.0 / 4.5, (one - peak) / (one - limit), 0.01);
  }

  @Test
  void aChartNeedsTwoPointsInTime() {
    List<Double> one = List.of(0.0);
    assertThrows(
        IllegalArgumentException.class,
        () -> HeatChart.draw(SAY, "h", new HeatCurve(one, one, one, one), 5.5, List.of()));
  }
}
