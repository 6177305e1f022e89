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

/** The drawings to scale. */
public final class ScaleDrawings implements PlanDrawings {
  /** Where the grains of a drawn surface lie is drawn by lot; always the same lot. */
  private static final long GRAIN_SEED = 1;

  @Override
  public LayerStrip strip(Say say, CutPlan plan, LayerStrip.Place place) {
    return LayerStrip.of(say, "strip", plan, place);
  }

  @Override
  public @Nullable Chart heat(Say say, CutPlan plan) {
    PulpHeat pulp = plan.pulp();
    if (pulp == null || pulp.curve().timesS().size() < 2) {
      return null;
    }
    return HeatChart.of(say, pulp.curve(), pulp.limitK(), StepTimes.startsS(plan));
  }

  @Override
  public String stroke(Say say, CutPlan plan, PlannedStep step) {
    StrokeDiagram.Site site =
        plan.cutCase().outline().shape().walled()
            ? StrokeDiagram.Site.OPENING
            : StrokeDiagram.Site.OUTSIDE;
    return StrokeDiagram.draw(say, "stroke-" + step.order(), step.stroke(), site);
  }

  @Override
  public String head(Say say, PlannedStep step) {
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
