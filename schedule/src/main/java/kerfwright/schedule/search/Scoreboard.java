package kerfwright.schedule.search;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.DayProgress;
import kerfwright.schedule.Goal;
import kerfwright.schedule.GoalResult;

/** The best plan so far, the bounds so far, and the time each goal took. Safe between threads. */
final class Scoreboard {
  private final DayView view;
  private final DayProgress progress;
  private final Map<Goal, Integer> bounds = new EnumMap<>(Goal.class);
  private final Map<Goal, Double> seconds = new EnumMap<>(Goal.class);
  private String solver;
  private Timetable best;

  Scoreboard(DayView view, DayProgress progress, String solver, Timetable first) {
    this.view = view;
    this.progress = progress;
    this.solver = solver;
    bounds.put(Goal.LOADS, view.fixedLoads);
    best = first;
    progress.better(plan());
  }

  /** Names who searches. */
  synchronized void solver(String name) {
    solver = name;
  }

  synchronized Timetable best() {
    return best;
  }

  /** Keeps the plan if it is better. */
  synchronized void offer(Timetable t) {
    if (t.betterThan(best, view)) {
      best = t;
      progress.better(plan());
    }
  }

  /** Time spent on a goal. */
  synchronized void spent(Goal goal, long sinceNanos) {
    seconds.merge(goal, (System.nanoTime() - sinceNanos) / 1e9, Double::sum);
  }

  /** Raises a bound, at most to the value reached. */
  synchronized void bound(Goal goal, int bound) {
    int capped = Math.min(bound, value(goal));
    if (capped > bounds.getOrDefault(goal, 0)) {
      bounds.put(goal, capped);
      progress.bound(goal, capped);
    }
  }

  synchronized boolean closed(Goal goal) {
    return bounds.getOrDefault(goal, 0) >= value(goal);
  }

  private int value(Goal goal) {
    return switch (goal) {
      case SHORTAGES -> best.shortages();
      case LOADS -> best.newLoads() + view.fixedLoads;
      case WEAR -> best.wear(view);
    };
  }

  /** The best plan with what is known about each goal; judged before it is handed out. */
  synchronized DayPlan plan() {
    List<GoalResult> results = new ArrayList<>();
    boolean proven = true;
    for (Goal g : Goal.values()) {
      int value = value(g);
      int bound = Math.min(value, bounds.getOrDefault(g, 0));
      proven &= bound == value;
      results.add(new GoalResult(g, value, bound, proven, seconds.getOrDefault(g, 0.0)));
    }
    return best.toPlan(view, results, solver);
  }
}
