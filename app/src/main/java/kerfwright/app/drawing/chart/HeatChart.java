package kerfwright.app.drawing.chart;

import java.util.Collections;
import java.util.List;
import kerfwright.app.drawing.Figures;
import kerfwright.app.words.Say;
import kerfwright.planner.Varied;
import kerfwright.planner.heat.WallHistory;
import kerfwright.planner.plan.HeatCurve;

/** Rise at the pulp wall against time, with the screening limit. */
public final class HeatChart {
  private HeatChart() {}

  /**
   * Typical line with its band, and the steps.
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
        limit(say, limitK),
        stepStartsS,
        List.of());
  }

  /** As planned and with one change, both by the quick column. */
  public static Chart compared(Say say, Varied.Rise planned, Varied.Rise changed) {
    return new Chart(
        say.at("whatif.heat-title"),
        say.at(
            "whatif.heat-about",
            Figures.of(say, Collections.max(planned.riseK())),
            Figures.of(say, Collections.max(changed.riseK())),
            Figures.of(say, WallHistory.LIMIT_K)),
        say.at("drawn.heat-time"),
        say.at("drawn.heat-rise"),
        List.of(
            new Chart.Line(say.at("whatif.planned"), planned.timesS(), planned.riseK()),
            new Chart.Line(say.at("whatif.changed"), changed.timesS(), changed.riseK())),
        null,
        limit(say, WallHistory.LIMIT_K),
        List.of(),
        List.of());
  }

  private static Chart.Level limit(Say say, double limitK) {
    return new Chart.Level(say.at("drawn.heat-limit", Figures.of(say, limitK)), limitK);
  }
}
