package kerfwright.app.drawing.strip;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import kerfwright.catalogue.operation.GeometryKind;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;

/**
 * One instrument in the mouth, from the change before it to the next.
 *
 * @param steps what is done with it, in order
 * @param beforeMm how deep its place has been cut before it
 * @param toMm how deep it is when the instrument leaves
 */
public record Stage(List<PlannedStep> steps, double beforeMm, double toMm) {
  private static final Set<String> SIDES = Set.of("facial", "lingual", "proximal", "axial");
  private static final Set<String> APART = Set.of("occlusal", "incisal", "margin");

  public Stage {
    steps = List.copyOf(steps);
  }

  /** The stages of a plan; operations one after the other with the same instrument are one. */
  public static List<Stage> of(CutPlan plan) {
    List<Stage> stages = new ArrayList<>();
    List<PlannedStep> done = new ArrayList<>();
    List<PlannedStep> now = new ArrayList<>();
    for (PlannedStep step : plan.steps()) {
      if (!now.isEmpty() && !same(now.get(0), step)) {
        stages.add(stage(done, now));
        done.addAll(now);
        now.clear();
      }
      now.add(step);
    }
    if (!now.isEmpty()) {
      stages.add(stage(done, now));
    }
    return List.copyOf(stages);
  }

  /** One step of a plan by itself. */
  static Stage only(CutPlan plan, int order) {
    return stage(plan.steps().subList(0, order - 1), plan.steps().subList(order - 1, order));
  }

  private static boolean same(PlannedStep one, PlannedStep other) {
    return one.instrument().id().equals(other.instrument().id())
        && one.handpiece().id().equals(other.handpiece().id());
  }

  private static Stage stage(List<PlannedStep> done, List<PlannedStep> now) {
    double to = now.stream().mapToDouble(s -> s.toMm().typical()).max().orElse(0);
    double before =
        done.stream()
            .filter(s -> now.stream().anyMatch(n -> place(n).equals(place(s))))
            .mapToDouble(s -> s.toMm().typical())
            .max()
            .orElse(0);
    return new Stage(now, before, Math.max(to, before));
  }

  /** Faces that are cut one from the other lie apart; the sides of a tooth are one. */
  private static String place(PlannedStep step) {
    String face = step.operation().row().geometry().face();
    return SIDES.contains(face) ? "side" : APART.contains(face) ? face : "";
  }

  public DrawerInstrument instrument() {
    return steps.get(0).instrument();
  }

  /** "3" or "4-6". */
  public String numbers() {
    int first = steps.get(0).order();
    int last = steps.get(steps.size() - 1).order();
    return first == last ? Integer.toString(first) : first + "\u2013" + last;
  }

  /** True where nothing is deeper after it than before. */
  boolean onlySmooths() {
    return toMm - beforeMm < 0.005 && steps.stream().allMatch(s -> kind(s) == GeometryKind.SWEEP);
  }

  static GeometryKind kind(PlannedStep step) {
    return step.operation().row().geometry().kind();
  }
}
