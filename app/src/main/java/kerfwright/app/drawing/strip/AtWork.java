package kerfwright.app.drawing.strip;

import java.util.List;
import java.util.stream.Collectors;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.operation.GeometryKind;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.Stroke;
import org.jspecify.annotations.Nullable;

/**
 * One instrument at its work in the layers, as it is drawn.
 *
 * @param badge number of the step or letter of the column
 * @param steps numbers of the steps of a plan, empty beside a plan
 * @param id the instrument's own id, may be empty
 * @param what the instrument
 * @param stroke how it is led
 * @param openingMm width of what is cut where its head is no wider
 * @param beforeMm how deep its place has been cut before it
 * @param toMm how deep it is afterwards
 * @param smoothRaUm roughness it leaves where nothing is deeper afterwards, else null
 */
public record AtWork(
    String badge,
    List<Integer> steps,
    String id,
    InstrumentProperties what,
    Stroke stroke,
    double openingMm,
    double beforeMm,
    double toMm,
    @Nullable Double smoothRaUm) {
  public AtWork {
    steps = List.copyOf(steps);
  }

  /** A new instrument at the wall of one layer. */
  public static AtWork inLayer(
      String letter, InstrumentProperties what, Stroke stroke, double deepMm) {
    return new AtWork(letter, List.of(), "", what, stroke, 0, 0, deepMm, null);
  }

  /** What is planned for one step. */
  public static AtWork atStep(CutPlan plan, int step) {
    return of(plan, Stage.only(plan, step));
  }

  static AtWork of(CutPlan plan, Stage stage) {
    PlannedStep last = stage.steps().get(stage.steps().size() - 1);
    return new AtWork(
        stage.numbers(),
        stage.steps().stream().map(PlannedStep::order).toList(),
        stage.instrument().id(),
        stage.instrument().properties(),
        last.stroke(),
        opening(plan, stage),
        stage.beforeMm(),
        stage.toMm(),
        stage.onlySmooths() ? last.raUm().typical() : null);
  }

  /** The opening of the case, or the slot. */
  private static double opening(CutPlan plan, Stage stage) {
    for (PlannedStep step : stage.steps()) {
      Double slot = step.operation().slotWidthMm();
      if (slot != null && Stage.kind(step) == GeometryKind.SLOT) {
        return slot;
      }
    }
    return plan.cutCase().outline().width().millimetres();
  }

  /** The same place, worked in another way. */
  public AtWork with(String letter, String other, InstrumentProperties tool, Stroke led) {
    return new AtWork(letter, List.of(), other, tool, led, openingMm, beforeMm, toMm, smoothRaUm);
  }

  /** Width of what is cut. */
  double wideMm() {
    return Math.max(openingMm, what.headDiameter().millimetres());
  }

  String stepNumbers() {
    return steps.stream().map(String::valueOf).collect(Collectors.joining(" "));
  }
}
