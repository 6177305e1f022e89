package kerfwright.app.plan;

import kerfwright.app.drawing.chart.Chart;
import kerfwright.app.drawing.chart.HeatChart;
import kerfwright.app.drawing.cut.StrokeDiagram;
import kerfwright.app.drawing.instrument.AbrasiveSurface;
import kerfwright.app.drawing.instrument.BladeSection;
import kerfwright.app.drawing.strip.LayerStrip;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.PulpHeat;
import org.jspecify.annotations.Nullable;

/** The drawings of a plan to scale, as SVG text; empty where there is none for it. */
public final class PlanDrawings {
  /** Where the grains of a drawn surface lie is drawn by lot; always the same lot. */
  private static final long GRAIN_SEED = 1;

  private PlanDrawings() {}

  /** The layers, and one stage for each instrument at its depth. */
  public static LayerStrip strip(Say say, CutPlan plan, LayerStrip.Place place) {
    return LayerStrip.of(say, "strip", plan, place);
  }

  /** Rise at the pulp wall against time; null where nothing is cut near a pulp. */
  public static @Nullable Chart heat(Say say, CutPlan plan) {
    PulpHeat pulp = plan.pulp();
    if (pulp == null || pulp.curve().timesS().size() < 2) {
      return null;
    }
    return HeatChart.of(say, pulp.curve(), pulp.limitK(), StepTimes.startsS(plan));
  }

  /** Direction of rotation and of the stroke. */
  public static String stroke(Say say, CutPlan plan, PlannedStep step) {
    StrokeDiagram.Site site =
        plan.cutCase().outline().shape().walled()
            ? StrokeDiagram.Site.OPENING
            : StrokeDiagram.Site.OUTSIDE;
    return StrokeDiagram.draw(say, "stroke-" + step.order(), step.stroke(), site);
  }

  /** Section of the head: blades or grains. */
  public static String head(Say say, PlannedStep step) {
    InstrumentProperties what = step.instrument().properties();
    Integer blades = what.blades();
    GritClass grit = what.grit();
    if (what.kind().bladed() && blades != null) {
      return BladeSection.draw(
          say, "head-" + step.order(), blades, what.headDiameter().millimetres());
    }
    return grit != null && what.kind().isDiamond()
        ? AbrasiveSurface.draw(say, "head-" + step.order(), grit, GRAIN_SEED)
        : "";
  }
}
