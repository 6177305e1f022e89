package kerfwright.app.drawing.chart;

import java.util.Collections;
import java.util.List;
import kerfwright.app.drawing.Figures;
import kerfwright.app.words.Say;
import kerfwright.planner.Varied;
import kerfwright.planner.heat.WallHistory;

/** Rise at the pulp wall as planned and with one change, both by the quick column. */
public final class WhatIfChart {
  private WhatIfChart() {}

  /** The chart. */
  public static Chart of(Say say, Varied.Rise planned, Varied.Rise changed) {
    double limit = WallHistory.LIMIT_K;
    return new Chart(
        say.at("whatif.heat-title"),
        say.at(
            "whatif.heat-about",
            Figures.of(say, Collections.max(planned.riseK())),
            Figures.of(say, Collections.max(changed.riseK())),
            Figures.of(say, limit)),
        say.at("drawn.heat-time"),
        say.at("drawn.heat-rise"),
        List.of(line(say, "whatif.planned", planned), line(say, "whatif.changed", changed)),
        null,
        new Chart.Level(say.at("drawn.heat-limit", Figures.of(say, limit)), limit),
        List.of(),
        List.of());
  }

  private static Chart.Line line(Say say, String name, Varied.Rise rise) {
    return new Chart.Line(say.at(name), rise.timesS(), rise.riseK());
  }
}
