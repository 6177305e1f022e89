package kerfwright.practice.daylist;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerfwright.planner.plan.Branch;
import kerfwright.planner.plan.Cue;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;

/**
 * What a case needs beside its rotary instruments: a handpiece, a hand instrument, a tip.
 *
 * @param anyOf ids of the kinds one of which serves, preferred first
 * @param ifNeeded true where only the mouth shows whether it is needed
 */
public record PieceNeed(List<String> anyOf, boolean ifNeeded) {
  public PieceNeed {
    if (anyOf.isEmpty()) {
      throw new IllegalArgumentException("A need of nothing");
    }
    anyOf = List.copyOf(anyOf);
  }

  /**
   * By a plan: each handpiece its steps are cut with, and what its operations name where no rotary
   * instrument works; of a plan that branches, what any branch takes.
   */
  public static List<PieceNeed> of(CutPlan plan) {
    Map<List<String>, PieceNeed> all = new LinkedHashMap<>();
    for (PlannedStep step : plan.steps()) {
      add(all, new PieceNeed(List.of(step.handpiece().id()), false));
    }
    for (Cue cue : plan.cues()) {
      List<String> tools = cue.row().window().otherTools();
      if (!tools.isEmpty()) {
        add(all, new PieceNeed(tools, cue.ifNeeded()));
      }
    }
    for (Branch branch : plan.branches()) {
      of(branch.plan()).forEach(need -> add(all, need));
    }
    return List.copyOf(all.values());
  }

  /** One tray for several plans: each need once. */
  public static List<PieceNeed> tray(List<List<PieceNeed>> plans) {
    Map<List<String>, PieceNeed> all = new LinkedHashMap<>();
    plans.forEach(plan -> plan.forEach(need -> add(all, need)));
    return List.copyOf(all.values());
  }

  private static void add(Map<List<String>, PieceNeed> all, PieceNeed need) {
    all.merge(
        need.anyOf(),
        need,
        (one, other) -> new PieceNeed(one.anyOf(), one.ifNeeded() && other.ifNeeded()));
  }
}
