package kerfwright.practice.day;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import java.util.Arrays;
import java.util.function.Function;
import java.util.function.ToLongFunction;

/** One plan of a day from the first greedy plan to the last proof. */
final class DaySearch {
  /** Shares of the time still left that a goal may take before it is put off unproven. */
  private static final double SHORTAGES_SHARE = 0.75;

  private static final double LOADS_SHARE = 0.7;
  private static final double BOUNDS_SHARE = 0.4;

  /** Length of the annealing for each of the first two goals, and the most time it may take. */
  private static final int MOST_RUNS = 2_000;

  private static final int RUNS_TIMES_DEMAND = 3_000_000;
  private static final double ANNEALING_SHARE = 0.25;

  /** Above this many needs the last goal is searched type by type only. */
  private static final int WHOLE_WEAR_UP_TO = 500;

  private final DayView view;
  private final SearchLimits limits;
  private final DayProgress progress;
  private final Scoreboard board;
  private final Search search;
  private final long started = System.nanoTime();

  DaySearch(DayProblem problem, SearchLimits limits, DayProgress progress) {
    view = new DayView(problem);
    this.limits = limits;
    this.progress = progress;
    board = new Scoreboard(view, progress);
    search = new Search(limits, progress::stopped);
  }

  /** Greedy first plan, annealing, and then the solver where its library is there. */
  DayPlan run() {
    board.offer(FirstPlan.of(view, limits.seed()));
    anneal();
    if (progress.stopped()) {
      return board.plan();
    }
    if (!NativeSolver.available()) {
      return new BeamDayPlanner().goOn(view, limits, board, progress::stopped);
    }
    board.solver("CP-SAT");
    int[] fewest = boundShortages();
    ReadyModel ready = new ReadyModel(view, fewest);
    if (!board.closed(Goal.SHORTAGES)) {
      ready.day.hint(board.best());
      ready.model.minimize(ready.shortages());
      solve(Goal.SHORTAGES, ready.model, ready.day::read, timeLeft() * SHORTAGES_SHARE);
    }
    ready.model.addLessOrEqual(ready.shortages(), board.best().shortages());
    ready.day.hint(board.best());
    ready.model.minimize(ready.loads());
    solve(Goal.LOADS, ready.model, ready.day::read, timeLeft() * LOADS_SHARE);
    if (!progress.stopped()) {
      wear();
    }
    return board.plan();
  }

  private TypeBounds typeBounds() {
    SearchLimits alone = new SearchLimits(limits.seconds(), 1, limits.seed());
    return new TypeBounds(view, new Search(alone, progress::stopped), limits.threads());
  }

  private int[] boundShortages() {
    board.begin(Goal.SHORTAGES);
    int[] fewest = typeBounds().shortages(timeLeft() * BOUNDS_SHARE);
    board.bound(Goal.SHORTAGES, Arrays.stream(fewest).sum());
    board.end(Goal.SHORTAGES);
    return fewest;
  }

  private void anneal() {
    int runs = Math.min(MOST_RUNS, RUNS_TIMES_DEMAND / (1 + view.problem.demand()));
    Annealing annealing =
        new Annealing(
            view,
            limits.seed(),
            board::offer,
            () -> progress.stopped() || timeLeft() < limits.seconds() * (1 - ANNEALING_SHARE));
    board.begin(Goal.SHORTAGES);
    if (board.best().shortages() > 0) {
      annealing.fewerShortages(board.best(), runs);
    }
    board.end(Goal.SHORTAGES);
    board.begin(Goal.LOADS);
    annealing.fewerLoads(board.best(), runs);
    board.end(Goal.LOADS);
  }

  private void wear() {
    board.begin(Goal.WEAR);
    WearByType byType = new WearByType(view, search);
    int n = view.types.size();
    int[] least = typeBounds().wear(timeLeft() * BOUNDS_SHARE);
    board.bound(Goal.WEAR, Arrays.stream(least).sum());
    for (int k = 0; k < n && timeLeft() > 0; k++) {
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
      model.day.hint(best);
      model.model.minimize(model.wear());
      solve(Goal.WEAR, model.model, model.day::read, timeLeft());
    }
  }

  private void solve(
      Goal goal, CpModel model, Function<ToLongFunction<IntVar>, Timetable> read, double seconds) {
    board.begin(goal);
    int fixed = goal == Goal.LOADS ? view.fixedLoads : 0;
    Search.Outcome outcome =
        search.run(
            model,
            goal == Goal.WEAR ? Search.FROM_BELOW : Search.RELAXATION,
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
