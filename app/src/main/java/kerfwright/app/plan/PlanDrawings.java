package kerfwright.app.plan;

import kerfwright.app.drawing.chart.Chart;
import kerfwright.app.drawing.strip.LayerStrip;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import org.jspecify.annotations.Nullable;

/** The drawings of a plan as SVG text; empty where there is none for it. */
public interface PlanDrawings {
  /** The layers, and one stage for each instrument at its depth, to scale. */
  LayerStrip strip(Say say, CutPlan plan, LayerStrip.Place place);

  /** Rise at the pulp wall against time; null where nothing is cut near a pulp. */
  @Nullable Chart heat(Say say, CutPlan plan);

  /** Direction of rotation and of the stroke. */
  String stroke(Say say, CutPlan plan, PlannedStep step);

  /** Section of the head: blades or grains. */
  String head(Say say, PlannedStep step);
}
