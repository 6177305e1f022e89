package kerfwright.practice.daylist;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import kerfwright.planner.plan.Branch;
import kerfwright.planner.plan.Cue;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.practice.drawer.StockItem;
import kerfwright.schedule.Need;
import kerfwright.schedule.Substitute;

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
   * As the plan of a day has to find it: a kind of which one is ready, else one there is at all,
   * the preferred first; the others in its stead.
   *
   * @param ready kinds of which a piece is ready
   * @param there kinds the drawer has pieces of
   */
  Need need(Set<String> ready, Set<String> there) {
    String kind =
        Stream.of(ready, there)
            .flatMap(kinds -> anyOf.stream().filter(kinds::contains))
            .findFirst()
            .orElse(anyOf.get(0));
    return new Need(
        kind,
        0,
        anyOf.stream().filter(one -> !one.equals(kind)).map(o -> new Substitute(o, 1)).toList());
  }

  /** The same need, with the first of these kinds that serves preferred. */
  PieceNeed preferring(Set<String> kinds) {
    List<String> order = new ArrayList<>(anyOf);
    anyOf.stream()
        .filter(kinds::contains)
        .findFirst()
        .ifPresent(
            first -> {
              order.remove(first);
              order.add(0, first);
            });
    return new PieceNeed(order, ifNeeded);
  }

  /** True where the plan of a day has found this for an appointment, or tells that it is short. */
  public boolean scheduledOn(PlannedDay day, String appointment) {
    return !ifNeeded
        && day.problem()
            .appointment(appointment)
            .filter(one -> one.needs().stream().anyMatch(anyOf::contains))
            .isPresent();
  }

  /** True where this piece is of one of the kinds. */
  public boolean servedBy(StockItem item) {
    return anyOf.stream().anyMatch(item::is);
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
