package kerfwright.schedule.search;

import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.DayProgress;
import kerfwright.schedule.Goal;
import kerfwright.schedule.GoalResult;
import kerfwright.schedule.SearchLimits;

/**
 * One plan of a day from the first to the last proof: the best so far, the bounds so far, and the
 * time each goal took. News come from the solver's threads.
 */
final class DaySearch {
  /** Shares of the time still left that a goal may take before it is put off unproven. */
  private static final double SHORTAGES_SHARE = 0.75;

  private static final double LOADS_SHARE = 0.7;
  private static final double ONE_TYPE_SHARE = 0.5;

  /** Above this many needs the solver cannot do anything for the last goal in a usual time. */
  private static final int WEAR_UP_TO = 500;

  private final DayView view;
  private final DayProgress progress;
  private final Search search;
  private final Map<Goal, Integer> bounds = new EnumMap<>(Goal.class);
  private final Map<Goal, Double> seconds = new EnumMap<>(Goal.class);
  private String by;
  private Timetable best;

  /**
   * @param by what found the first plan, in words
   */
  DaySearch(DayView view, SearchLimits limits, DayProgress progress, String by, Timetable first) {
    this.view = view;
    this.progress = progress;
    this.by = by;
    search = new Search(limits, progress::stopped);
    bounds.put(Goal.LOADS, view.fixedLoads);
    best = first;
    progress.better(plan());
  }

  /** Keeps the plan if it is better. */
  synchronized void offer(Timetable t) {
    if (t.betterThan(best, view)) {
      best = t;
      progress.better(plan());
    }
  }

  /** Goal by goal to the last that counts, each with the values of those before held. */
  void improve(Goal last) {
    by = "CP-SAT";
    DayModel ready = new DayModel(view, Levels::pooled);
    minimise(Goal.SHORTAGES, ready, ready.shortages(), search.left() * SHORTAGES_SHARE);
    ready.hold(best.shortages(), Integer.MAX_VALUE);
    minimise(Goal.LOADS, ready, ready.loads(), search.left() * LOADS_SHARE);
    if (last == Goal.WEAR && !progress.stopped() && view.day.demand() <= WEAR_UP_TO) {
      wear();
    }
  }

  /** The last goal, each type bounded by itself first. */
  private void wear() {
    long began = System.nanoTime();
    int n = view.types.size();
    int[] least = new int[n];
    int sum = 0;
    for (int k = 0; k < n && search.left() > 0; k++) {
      DayModel one = new DayModel(view, Levels::worn, List.of(k), new Timetable(view));
      double share = search.left() * ONE_TYPE_SHARE / (n - k);
      int bound = search.run(one, one.wear(), Search.RELAXATION, share, t -> {}, any -> {}).bound();
      least[k] = Math.max(0, bound);
      sum += least[k];
    }
    spent(Goal.WEAR, began);
    bound(Goal.WEAR, sum);
    DayModel all = new DayModel(view, Levels::worn);
    all.hold(best.shortages(), best.newLoads());
    minimise(Goal.WEAR, all, all.wear(least), search.left());
  }

  private void spent(Goal goal, long sinceNanos) {
    seconds.merge(goal, (System.nanoTime() - sinceNanos) / 1e9, Double::sum);
  }

  private void minimise(Goal goal, DayModel model, LinearExprBuilder value, double share) {
    if (bounds.getOrDefault(goal, 0) >= value(goal)) {
      return;
    }
    long began = System.nanoTime();
    int fixed = goal == Goal.LOADS ? view.fixedLoads : 0;
    model.hint(best);
    Search.Outcome outcome =
        search.run(
            model,
            value,
            goal == Goal.WEAR ? Search.FROM_BELOW : Search.RELAXATION,
            share,
            this::offer,
            bound -> bound(goal, bound + fixed));
    bound(goal, outcome.proven() ? Integer.MAX_VALUE : outcome.bound() + fixed);
    spent(goal, began);
  }

  /** The cheapest plan by a cost that stands above the goals. */
  void repair(DayModel model, LinearExprBuilder cost) {
    by = "CP-SAT repair";
    Consumer<Timetable> cheaper = t -> best = t;
    search.run(model, cost, List.of(), search.left(), cheaper, bound -> {});
  }

  /** Raises a bound, at most to the value reached. */
  private synchronized void bound(Goal goal, int bound) {
    int capped = Math.min(bound, value(goal));
    if (capped > bounds.getOrDefault(goal, 0)) {
      bounds.put(goal, capped);
      progress.bound(goal, capped);
    }
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
    return best.toPlan(view, results, by);
  }
}
