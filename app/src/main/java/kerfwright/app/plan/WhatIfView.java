package kerfwright.app.plan;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.drawing.chart.Chart;
import kerfwright.app.drawing.chart.HeatChart;
import kerfwright.app.words.Say;
import kerfwright.planner.Varied;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.heat.WallHistory;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.PulpBand;
import org.jspecify.annotations.Nullable;

/**
 * What a change would do, row by row.
 *
 * @param step order of the step asked about
 * @param refusal why it is not allowed, empty where it is
 * @param rows figures before and after
 * @param heat rise at the pulp wall before and after, null where a change is refused
 */
public record WhatIfView(int step, String refusal, List<Row> rows, @Nullable Chart heat) {
  private static final double SAME = 0.005;

  /**
   * One figure.
   *
   * @param name key of its name
   * @param before as planned
   * @param after with the change, a dash where that is refused
   * @param difference with its sign
   * @param way better, worse or same
   */
  public record Row(String name, String before, String after, String difference, String way) {
    /** Which way it goes, besides the sign. */
    public String arrow() {
      return switch (way) {
        case "worse" -> "\u2191";
        case "better" -> "\u2193";
        default -> "=";
      };
    }
  }

  static WhatIfView of(Say say, int step, Varied varied, boolean dry) {
    Exclusion no = varied.refusal();
    String refusal =
        no == null
            ? ""
            : varied.refusedStep() > 0
                ? say.at("whatif.refused-step", varied.refusedStep(), say.of(no.message()))
                : say.of(no.message());
    Varied.Figures was = varied.before();
    Varied.Figures is = varied.after();
    List<Row> rows = new ArrayList<>();
    rows.add(
        row(
            say,
            "whatif.step-time",
            was.stepTimeS(),
            is == null ? null : is.stepTimeS(),
            e -> Figures.time(say, e)));
    rows.add(
        row(
            say,
            "whatif.total-time",
            was.totalTimeS(),
            is == null ? null : is.totalTimeS(),
            e -> Figures.time(say, e)));
    rows.add(heat(say, was.peakRiseK(), is == null ? null : is.peakRiseK(), dry));
    rows.add(
        row(
            say,
            "whatif.roughness",
            was.raUm(),
            is == null ? null : is.raUm(),
            e -> Figures.withRange(say, e, "\u00b5m")));
    rows.add(
        row(
            say,
            "whatif.life",
            was.lifeUsed(),
            is == null ? null : is.lifeUsed(),
            e -> Words.percent(say, e)));
    Chart heat = is == null ? null : HeatChart.compared(say, was.rise(), is.rise());
    return new WhatIfView(step, refusal, List.copyOf(rows), heat);
  }

  /** Reads a view of what was asked. */
  public static WhatIfView of(Say say, WhatIfForm asked, kerfwright.planner.WhatIf plan) {
    boolean dry = plan.dry() || asked.water() < CutCase.DRY_ML_PER_MIN;
    return of(say, asked.step(), plan.ask(asked.variation()), dry);
  }

  private static Row row(
      Say say,
      String name,
      Estimate was,
      @Nullable Estimate is,
      java.util.function.Function<Estimate, String> words) {
    if (is == null) {
      return new Row(name, words.apply(was), "\u2013", "", "same");
    }
    double share = (is.typical() - was.typical()) / Math.max(1e-12, was.typical());
    return new Row(
        name,
        words.apply(was),
        words.apply(is),
        Math.abs(share) < SAME ? "" : signed(say, share * 100, "%"),
        way(share, SAME));
  }

  /** Cut dry, a figure would promise too much: the three words stand alone. */
  private static Row heat(Say say, Estimate was, @Nullable Estimate is, boolean dry) {
    java.util.function.Function<Estimate, String> words =
        dry
            ? e -> say.at("plan.pulp-dry-" + PulpBand.of(e, WallHistory.LIMIT_K).id())
            : e -> Figures.withRange(say, e, "K");
    String before = words.apply(was);
    if (is == null) {
      return new Row("whatif.pulp", before, "\u2013", "", "same");
    }
    double more = is.typical() - was.typical();
    return new Row(
        "whatif.pulp",
        before,
        words.apply(is),
        dry || Math.abs(more) < 0.05 ? "" : signed(say, more, "K"),
        way(more, 0.05));
  }

  private static String way(double more, double same) {
    return Math.abs(more) < same ? "same" : more > 0 ? "worse" : "better";
  }

  private static String signed(Say say, double value, String unit) {
    return (value > 0 ? "+" : "\u2212") + Figures.plain(say, Math.abs(value)) + " " + unit;
  }
}
