package kerfwright.app.drawing.chart;

import java.util.Collections;
import java.util.List;
import kerfwright.app.drawing.Figures;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.HeatCurve;

/** Rise at the pulp wall against time: typical line with its band, screening limit, steps. */
public final class HeatChart {
  private HeatChart() {}

  /**
   * The chart.
   *
   * @param stepStartsS when each step begins, on the curve's own clock
   */
  public static Chart of(Say say, HeatCurve curve, double limitK, List<Double> stepStartsS) {
    Chart.Line typical =
        new Chart.Line(say.at("drawn.heat-typical"), curve.timesS(), curve.typicalK());
    return new Chart(
        say.at("drawn.heat-title"),
        say.at(
            "drawn.heat-about",
            Figures.of(say, curve.timesS().get(curve.timesS().size() - 1)),
            Figures.of(say, Collections.max(curve.typicalK())),
            Figures.of(say, Collections.max(curve.highK())),
            Figures.of(say, Collections.min(curve.lowK())),
            Figures.of(say, limitK),
            stepStartsS.size()),
        say.at("drawn.heat-time"),
        say.at("drawn.heat-rise"),
        List.of(typical),
        new Chart.Band(say.at("drawn.heat-band"), curve.lowK(), curve.highK()),
        new Chart.Level(say.at("drawn.heat-limit", Figures.of(say, limitK)), limitK),
        stepStartsS,
        List.of());
  }
}
