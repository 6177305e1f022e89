package kerfwright.app.daypage;

import java.util.List;
import kerfwright.app.drawing.chart.Chart;
import kerfwright.app.words.Say;
import kerfwright.practice.horizon.StockCurve;
import kerfwright.practice.horizon.StockPoint;

/** Shortages a week against the cost of the stock. */
final class WeekCurve {
  private WeekCurve() {}

  static Chart of(Say say, StockCurve curve, StockPoint enough) {
    List<StockPoint> points = curve.points();
    String shortages = say.at("day.week-shortages");
    return Chart.of(
        say.at("day.week-curve"),
        say.at(
            "day.week-about",
            WeekPages.figure(say, curve.now().cost()),
            WeekPages.figure(say, curve.now().shortagesPerWeek()),
            WeekPages.figure(say, enough.cost()),
            WeekPages.figure(say, enough.shortagesPerWeek())),
        say.at("day.week-cost"),
        shortages,
        List.of(
            new Chart.Line(
                shortages,
                points.stream().map(StockPoint::cost).toList(),
                points.stream().map(StockPoint::shortagesPerWeek).toList())),
        List.of(
            spot(say.at("day.week-enough"), enough), spot(say.at("day.week-now"), curve.now())));
  }

  private static Chart.Spot spot(String name, StockPoint point) {
    return new Chart.Spot(name, point.cost(), point.shortagesPerWeek());
  }
}
