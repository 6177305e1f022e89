package kerfwright.app.plan;

import kerfwright.app.drawing.Chart;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import org.jspecify.annotations.Nullable;

/** The drawings of a plan as SVG text; empty where there is none for it. */
public interface PlanDrawings {
  /** The tooth cut open: layers and how deep each step goes, to scale. */
  String section(Say say, CutPlan plan);

  /** The same for a small sheet of paper. */
  String lowSection(Say say, CutPlan plan);

  /** Rise at the pulp wall against time; null where nothing is cut near a pulp. */
  @Nullable Chart heat(Say say, CutPlan plan);

  /** Silhouette of the instrument, to scale. */
  String instrument(Say say, PlannedStep step);

  /** Direction of rotation and of the stroke. */
  String stroke(Say say, CutPlan plan, PlannedStep step);

  /** Section of the head: blades or grains. */
  String head(Say say, PlannedStep step);
}
