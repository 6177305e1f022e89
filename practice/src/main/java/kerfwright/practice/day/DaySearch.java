package kerfwright.practice.day;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import java.util.function.Function;
import java.util.function.ToLongFunction;

/** One plan of a day from the first greedy plan to the last proof. */
final class DaySearch {
  /** Shares of the time still left that a goal may take before it is put off unproven. */
  private static final double SHORTAGES_SHARE = 0.75;

  private static final double LOADS_SHARE = 0.7;

  /** Above this many needs the last goal is searched type by type only. */
  private static final int WHOLE_WEAR_UP_TO = 500;

  private final DayView view;
  private final SearchLimits limits;
  private final Scoreboard board;
  private final Search search;
  private final long started = System.nanoTime();

  DaySearch(DayProblem problem, SearchLimits limits, DayProgress progress) {
    view = new DayView(problem);
    this.limits = limits;
    board = new Scoreboard(view, progress, "CP-SAT");
    search = new Search(limits, progress::stopped);
  }

  DayPlan run() {
    board.offer(FirstPlan.of(view, limits.seed()));
    ReadyModel ready = new ReadyModel(view);
    ready.hint(board.best());
    ready.model.minimize(ready.shortages());
    goal(Goal.SHORTAGES, ready.model, ready::read, timeLeft() * SHORTAGES_SHARE);

    ready.model.addLessOrEqual(ready.shortages(), board.best().shortages());
    ready.hint(board.best());
    ready.model.minimize(ready.loads());
    goal(Goal.LOADS, ready.model, ready::read, timeLeft() * LOADS_SHARE);
    wear();
    return board.plan();
  }

  private void wear() {
    board.begin(Goal.WEAR);
    WearByType byType = new WearByType(view, search);
    int n = view.types.size();
    int[] least = new int[n];
    int sum = 0;
    for (int k = 0; k < n; k++) {
      least[k] = byType.least(k, timeLeft() / (2 * (n - k)));
      sum += least[k];
    }
    board.bound(Goal.WEAR, sum);
    for (int k = 0; k < n; k++) {
      Timetable t = board.best().copy(view);
      if (byType.improve(t, k, least[k], timeLeft() / (2 * (n - k)))) {
        t.trim(view);
        board.offer(t);
      }
    }
    board.end(Goal.WEAR);
    if (view.problem.demand() <= WHOLE_WEAR_UP_TO && !board.closed(Goal.WEAR)) {
      Timetable best = board.best();
      WearModel model = new WearModel(view, best.shortages(), best.newLoads(), least);
      model.hint(best);
      model.model.minimize(model.wear());
      goal(Goal.WEAR, model.model, model::read, timeLeft());
    }
  }

  private void goal(
      Goal goal, CpModel model, Function<ToLongFunction<IntVar>, Timetable> read, double seconds) {
    board.begin(goal);
    int fixed = goal == Goal.LOADS ? view.fixedLoads : 0;
    Search.Outcome outcome =
        search.run(
            model,
            seconds,
            value -> board.offer(read.apply(value)),
            bound -> board.bound(goal, bound + fixed));
    board.bound(goal, outcome.proven() ? Integer.MAX_VALUE : outcome.bound() + fixed);
    board.end(goal);
  }

  private double timeLeft() {
    return limits.seconds() - (System.nanoTime() - started) / 1e9;
  }
}
