package kerfwright.app.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import kerfwright.app.drawing.chart.Chart;
import kerfwright.app.drawing.chart.HeatChart;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.HeatCurve;
import org.junit.jupiter.api.Test;

class HeatChartTest {
  private static final Say SAY = Say.in(Language.ENGLISH);

  private static String drawn(HeatCurve curve, Double... starts) {
    return HeatChart.of(SAY, curve, 5.5, List.of(starts)).svg(SAY, "h");
  }

  @Test
  void theCurveStandsAtItsHeightBetweenZeroAndTheLimit() {
    HeatCurve curve = InventedPlans.heating();
    SvgReader svg = new SvgReader(drawn(curve, 0.0, 42.0));
    double limit = SvgReader.points(svg.withClass("level").get(0)).get(0).y();
    List<Svg.Point> line = SvgReader.points(svg.withClass("line").get(0));
    double zero = line.get(0).y();
    double peak = line.stream().mapToDouble(Svg.Point::y).min().orElseThrow();
    assertEquals(Collections.max(curve.typicalK()) / 5.5, (zero - peak) / (zero - limit), 0.002);
    assertTrue(line.size() < 400, "thinned for print, got " + line.size());
  }

  @Test
  void coolingBelowBodyTemperatureStaysInTheChart() {
    String drawn = drawn(InventedPlans.coolingBelowZero());
    assertEquals(1, new SvgReader(drawn).withClass("zero").size());
    assertTrue(drawn.contains("\u22125"));
  }

  @Test
  void everyStepIsMarkedWhereItBegins() {
    SvgReader svg = new SvgReader(drawn(InventedPlans.heating(), 0.0, 90.0, 91.0));
    var marks = svg.withClass("begin");
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
    SvgReader svg = new SvgReader(drawn(new HeatCurve(time, flat, flat, flat)));
    double limit = SvgReader.points(svg.withClass("level").get(0)).get(0).y();
    List<Svg.Point> line = SvgReader.points(svg.withClass("line").get(0));
    double peak = line.stream().mapToDouble(Svg.Point::y).min().orElseThrow();
    double one = line.get(0).y();
    assertEquals(3.0 / 4.5, (one - peak) / (one - limit), 0.01);
  }

  @Test
  void scriptAndDrawingShowTheSameValuesBetweenTheSameEnds() throws IOException {
    HeatCurve curve = InventedPlans.coolingBelowZero();
    Chart chart = HeatChart.of(Say.in(Language.GERMAN), curve, 5.5, List.of(0.0, 42.0));
    JsonNode json = new ObjectMapper().readTree(chart.json(Say.in(Language.GERMAN)));
    assertTrue(json.get("comma").asBoolean());
    assertEquals(chart.lowest(), json.get("lowest").asDouble(), 1e-4);
    assertEquals(chart.highest(), json.get("highest").asDouble(), 1e-4);
    assertEquals(5.5, json.get("level").get("y").asDouble());
    assertEquals(42, json.get("begins").get(1).asDouble());
    for (int i = 0; i < curve.timesS().size(); i++) {
      assertEquals(curve.timesS().get(i), json.at("/lines/0/x/" + i).asDouble(), 1e-3);
      assertEquals(curve.typicalK().get(i), json.at("/lines/0/y/" + i).asDouble(), 1e-4);
      assertEquals(curve.lowK().get(i), json.at("/band/low/" + i).asDouble(), 1e-4);
      assertEquals(curve.highK().get(i), json.at("/band/high/" + i).asDouble(), 1e-4);
    }
  }

  @Test
  void aChartNeedsTwoPointsInTime() {
    List<Double> one = List.of(0.0);
    assertThrows(IllegalArgumentException.class, () -> drawn(new HeatCurve(one, one, one, one)));
  }
}
