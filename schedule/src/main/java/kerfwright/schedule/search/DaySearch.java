package kerfwright.schedule.search;

import com.google.ortools.sat.LinearExprBuilder;
import java.util.Arrays;
import java.util.List;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.DayProgress;
import kerfwright.schedule.Goal;
import kerfwright.schedule.SearchLimits;

/** One plan of a day from the first greedy plan to the last proof. */
final class DaySearch {
  /** Variations of the greedy plan before the solver takes over. */
  private static final int GREEDY_RUNS = 1_000;

  /** Shares of the time still left that a goal may take before it is put off unproven. */
  private static final double SHORTAGES_SHARE = 0.75;

  private static final double LOADS_SHARE = 0.7;
  private static final double ONE_TYPE_SHARE = 0.5;

  /** Above this many needs the last goal is searched type by type only. */
  private static final int WHOLE_WEAR_UP_TO = 500;

  private final DayView view;
  private final SearchLimits limits;
  private final DayProgress progress;
  private final Scoreboard board;
  private final Search search;

  DaySearch(Day day, SearchLimits limits, DayProgress progress) {
    view = new DayView(day);
    this.limits = limits;
    this.progress = progress;
    search = new Search(limits, progress::stopped);
    board = new Scoreboard(view, progress, "first plan", FirstPlan.of(view, limits.seed()));
  }

  /** The first plan, and then the solver where it is wanted and its library is there. */
  DayPlan run(boolean solver) {
    if (!progress.stopped()) {
      board.offer(FirstPlan.of(view, limits.seed(), GREEDY_RUNS));
    }
    if (!solver || progress.stopped() || !NativeSolver.available()) {
      return board.plan();
    }
    board.solver("CP-SAT");
    DayModel ready = new DayModel(view, Levels::pooled);
    minimise(Goal.SHORTAGES, ready, ready.shortages(), search.left() * SHORTAGES_SHARE);
    ready.model.addLessOrEqual(ready.shortages(), board.best().shortages());
    minimise(Goal.LOADS, ready, ready.loads(), search.left() * LOADS_SHARE);
    if (!progress.stopped()) {
      wear();
    }
    return board.plan();
  }

  /** Days of a usual size as a whole, bounded type by type; large days type by type alone. */
  private void wear() {
    long began = System.nanoTime();
    boolean whole = view.day.demand() <= WHOLE_WEAR_UP_TO;
    int n = view.types.size();
    int[] least = new int[n];
    for (int k = 0; k < n && search.left() > 0; k++) {
      Timetable others = whole ? new Timetable(view) : board.best();
      DayModel one = new DayModel(view, Levels::worn, List.of(k), others);
      LinearExprBuilder wear = one.wear();
      if (!whole) {
        hold(one, shortIn(others, k), others.newLoads());
        one.hint(others);
      }
      double seconds = search.left() * ONE_TYPE_SHARE / (n - k);
      least[k] =
          Math.max(
              0,
              search
                  .run(
                      one,
                      wear,
                      Search.RELAXATION,
                      seconds,
                      whole ? t -> {} : board::offer,
                      b -> {})
                  .bound());
    }
    board.spent(Goal.WEAR, began);
    if (whole) {
      board.bound(Goal.WEAR, Arrays.stream(least).sum());
      DayModel all = new DayModel(view, Levels::worn);
      hold(all, board.best().shortages(), board.best().newLoads());
      minimise(Goal.WEAR, all, all.wear(least), search.left());
    }
  }

  private static int shortIn(Timetable t, int k) {
    int n = 0;
    for (int u : t.unit[k]) {
      n += u == Timetable.SHORT ? 1 : 0;
    }
    return n;
  }

  private static void hold(DayModel model, int shortages, int loads) {
    model.model.addLessOrEqual(model.shortages(), shortages);
    model.model.addLessOrEqual(model.loads(), loads);
  }

  private void minimise(Goal goal, DayModel model, LinearExprBuilder value, double seconds) {
    if (board.closed(goal)) {
      return;
    }
    long began = System.nanoTime();
    int fixed = goal == Goal.LOADS ? view.fixedLoads : 0;
    model.hint(board.best());
    Search.Outcome outcome =
        search.run(
            model,
            value,
            goal == Goal.WEAR ? Search.FROM_BELOW : Search.RELAXATION,
            seconds,
            board::offer,
            bound -> board.bound(goal, bound + fixed));
    board.bound(goal, outcome.proven() ? Integer.MAX_VALUE : outcome.bound() + fixed);
    board.spent(goal, began);
  }
}
