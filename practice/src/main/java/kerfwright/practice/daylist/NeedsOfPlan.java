package kerfwright.practice.daylist;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleBinaryOperator;
import kerfwright.planner.plan.Branch;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.RunnerUp;
import kerfwright.schedule.Need;
import kerfwright.schedule.Substitute;

/**
 * What a tray needs by the plan of its case: each type once, the life its steps ask of it, and the
 * runners-up of the plan as substitutes. A type that serves several steps is replaced only by what
 * is runner-up in each of them, at the dearest ratio.
 */
public final class NeedsOfPlan {
  private NeedsOfPlan() {}

  /**
   * Needs of a plan, in the order of its steps; none for a refused plan. A plan that branches needs
   * what any branch takes, and the life of the one that asks most: only one is cut.
   */
  public static List<Need> of(CutPlan plan) {
    Map<String, Need> any = new LinkedHashMap<>();
    for (Branch branch : plan.branches()) {
      of(branch.plan()).forEach(n -> any.merge(n.type(), n, (a, b) -> both(a, b, Math::max)));
    }
    Map<String, Need> all = new LinkedHashMap<>();
    for (PlannedStep step : plan.steps()) {
      Need need = ofStep(plan, step);
      all.merge(need.type(), need, (a, b) -> both(a, b, Double::sum));
    }
    any.values().forEach(n -> all.merge(n.type(), n, (a, b) -> both(a, b, Double::sum)));
    return all.values().stream().map(n -> n.without(all.keySet())).toList();
  }

  /** One type for two needs: replaced only by what replaces it in both, at the dearer ratio. */
  private static Need both(Need one, Need other, DoubleBinaryOperator life) {
    List<Substitute> common = new ArrayList<>();
    for (Substitute a : one.substitutes()) {
      other.substitutes().stream()
          .filter(b -> b.type().equals(a.type()))
          .map(b -> new Substitute(a.type(), Math.max(a.costRatio(), b.costRatio())))
          .forEach(common::add);
    }
    return new Need(one.type(), life.applyAsDouble(one.lifeAsked(), other.lifeAsked()), common);
  }

  private static Need ofStep(CutPlan plan, PlannedStep step) {
    Map<String, Double> cheapest = new TreeMap<>();
    for (RunnerUp other : plan.runnersUp()) {
      if (other.step() == step.order() && other.costRatio() > 0) {
        cheapest.merge(TypeName.of(other.instrument().properties()), other.costRatio(), Math::min);
      }
    }
    List<Substitute> substitutes = new ArrayList<>();
    cheapest.forEach((type, ratio) -> substitutes.add(new Substitute(type, ratio)));
    return new Need(
        TypeName.of(step.instrument().properties()), step.lifeUsed().typical(), substitutes);
  }
}
