package kerfwright.practice.day;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The best plan so far, the bounds so far, and the time each goal took. Safe between threads. */
final class Scoreboard {
  private final DayView view;
  private final DayProgress progress;
  private String solver = "first plan";
  private final Map<Goal, Integer> bounds = new EnumMap<>(Goal.class);
  private final Map<Goal, Double> seconds = new EnumMap<>(Goal.class);
  private @Nullable Timetable best;
  private long begun;

  Scoreboard(DayView view, DayProgress progress) {
    this.view = view;
    this.progress = progress;
    for (Goal g : Goal.values()) {
      bounds.put(g, g == Goal.LOADS ? view.fixedLoads : 0);
      seconds.put(g, 0.0);
    }
  }

  /** Names who searches. */
  synchronized void solver(String name) {
    solver = name;
  }

  synchronized Timetable best() {
    if (best == null) {
      throw new IllegalStateException("no plan yet");
    }
    return best;
  }

  /** Keeps the plan if it is better. */
  synchronized void offer(Timetable t) {
    if (best == null || t.betterThan(best, view)) {
      best = t;
      progress.better(plan());
    }
  }

  synchronized void begin(Goal goal) {
    begun = System.nanoTime();
  }

  synchronized void end(Goal goal) {
    seconds.merge(goal, (System.nanoTime() - begun) / 1e9, Double::sum);
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
    Timetable t = best();
    return switch (goal) {
      case SHORTAGES -> t.shortages();
      case LOADS -> t.newLoads() + view.fixedLoads;
      case WEAR -> t.wear(view);
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
    DayPlan plan = best().toPlan(view, results, solver);
    DayReferee.Verdict verdict = DayReferee.judge(view.problem, plan);
    if (!verdict.valid()) {
      throw new IllegalStateException("The plan breaks rules: " + verdict.errors());
    }
    return plan;
  }
}
