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
    ofSteps(plan).forEach(n -> all.put(n.type(), n));
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

  private static List<Need> ofSteps(CutPlan plan) {
    Map<String, List<PlannedStep>> steps = new LinkedHashMap<>();
    for (PlannedStep step : plan.steps()) {
      steps
          .computeIfAbsent(TypeName.of(step.instrument().properties()), t -> new ArrayList<>())
          .add(step);
    }
    List<Need> needs = new ArrayList<>();
    steps.forEach(
        (type, served) -> {
          double asked = served.stream().mapToDouble(s -> s.lifeUsed().typical()).sum();
          needs.add(new Need(type, asked, substitutes(plan, type, served, steps)));
        });
    return needs;
  }

  private static List<Substitute> substitutes(
      CutPlan plan, String type, List<PlannedStep> served, Map<String, List<PlannedStep>> steps) {
    Map<String, Double> ratio = new TreeMap<>();
    Map<String, Integer> serves = new TreeMap<>();
    for (PlannedStep step : served) {
      Map<String, Double> cheapest = new TreeMap<>();
      for (RunnerUp other : plan.runnersUp()) {
        if (other.step() == step.order()) {
          cheapest.merge(
              TypeName.of(other.instrument().properties()), other.costRatio(), Math::min);
        }
      }
      cheapest.forEach(
          (name, cost) -> {
            ratio.merge(name, cost, Math::max);
            serves.merge(name, 1, Integer::sum);
          });
    }
    List<Substitute> all = new ArrayList<>();
    ratio.forEach(
        (name, cost) -> {
          boolean everywhere = serves.getOrDefault(name, 0) == served.size();
          if (everywhere && !name.equals(type) && !steps.containsKey(name) && cost > 0) {
            all.add(new Substitute(name, cost));
          }
        });
    return all;
  }
}
