package kerfwright.practice.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/**
 * Plans a day in plain Java, for machines the solver's native library is not there for.
 *
 * <p>The day is walked through once, minute by minute, with all distinguishable states kept side by
 * side. Of two ways into one state only the better in (shortages, loads) is kept; wear depends on
 * the final state alone, so nothing is lost. Small days stay exact and are proven. Where there are
 * more states than fit, only the most promising are kept, and then nothing is called proven. Large
 * days get the first plan alone.
 */
public final class BeamDayPlanner implements DayPlanner {
  private static final int WIDEST = 40_000;
  private static final int STATES_TIMES_INSTRUMENTS = 600_000;

  /** Beyond this many needs a walk keeps too small a share of the states to be worth its time. */
  private static final int WALKED_UP_TO = 150;

  private static final String NAME = "plain Java";

  private final int width;

  public BeamDayPlanner() {
    this(WIDEST);
  }

  /**
   * @param width most states kept side by side
   */
  BeamDayPlanner(int width) {
    this.width = width;
  }

  @Override
  public DayPlan plan(DayProblem problem, SearchLimits limits, DayProgress progress) {
    DayView view = new DayView(problem);
    Scoreboard board = new Scoreboard(view, progress);
    board.solver(NAME);
    board.offer(FirstPlan.of(view, limits.seed()));
    return goOn(view, limits, board, progress::stopped);
  }

  /** Walks through the day from a board that holds a first plan. */
  DayPlan goOn(DayView view, SearchLimits limits, Scoreboard board, BooleanSupplier stopped) {
    board.solver(NAME);
    if (view.problem.demand() > WALKED_UP_TO) {
      return board.plan();
    }
    long started = System.nanoTime();
    board.begin(Goal.SHORTAGES);
    int instruments = view.types.stream().mapToInt(t -> t.units).sum();
    int keep = Math.max(20, Math.min(width, STATES_TIMES_INSTRUMENTS / (1 + instruments)));
    boolean exact = true;
    List<DayState> states = new ArrayList<>(List.of(DayState.start(view)));
    for (DayEvent event : DayEvent.of(view)) {
      if (stopped.getAsBoolean() || (System.nanoTime() - started) / 1e9 > limits.seconds()) {
        board.end(Goal.SHORTAGES);
        return board.plan();
      }
      Map<DayState, DayState> reached = new HashMap<>();
      for (DayState s : states) {
        exact &= event.follow(view, s, next -> reached.merge(next, next, DayState::cheaper));
      }
      states = new ArrayList<>(reached.values());
      if (states.size() > keep) {
        exact = false;
        states.sort(
            Comparator.comparingInt(DayState::promise).thenComparingInt(DayState::hashCode));
        states = new ArrayList<>(states.subList(0, keep));
      }
    }
    for (DayState s : states) {
      board.offer(s.timetable(view));
    }
    if (exact) {
      for (Goal g : Goal.values()) {
        board.bound(g, Integer.MAX_VALUE);
      }
    }
    board.end(Goal.SHORTAGES);
    return board.plan();
  }
}
