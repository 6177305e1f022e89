package kerfwright.schedule.search;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.List;
import java.util.Timer;
import java.util.TimerTask;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import kerfwright.schedule.SearchLimits;
import org.jspecify.annotations.Nullable;

/**
 * Runs of the solver within one time limit: their settings, their news, and how they are stopped.
 *
 * <p>Bounds are read when a solution is found and at the end. The solver's own callback for bounds
 * is left alone: version 9.15 keeps no global reference to it and brings the virtual machine down.
 */
final class Search {
  /** Full linear relaxation: it alone closes the flow goals, other strategies only take threads. */
  static final List<String> RELAXATION = List.of("max_lp");

  /** The last goal is closed from below. */
  static final List<String> FROM_BELOW = List.of("max_lp", "objective_lb_search_max_lp");

  private static final int WATCH_MS = 50;

  private final SearchLimits limits;
  private final BooleanSupplier stopped;
  private final long started = System.nanoTime();

  Search(SearchLimits limits, BooleanSupplier stopped) {
    this.limits = limits;
    this.stopped = stopped;
  }

  /** Seconds left. */
  double left() {
    return limits.seconds() - (System.nanoTime() - started) / 1e9;
  }

  /**
   * What came out.
   *
   * @param bound proven bound of the objective
   * @param proven whether the search is closed: the best is optimal, or there is none
   */
  record Outcome(int bound, boolean proven) {}

  /** Minimises; each solution is handed over as it is found, the last being the best. */
  Outcome run(
      DayModel day,
      LinearExprBuilder objective,
      List<String> subsolvers,
      double seconds,
      Consumer<Timetable> solution,
      IntConsumer bound) {
    if (seconds <= 0 || stopped.getAsBoolean()) {
      return new Outcome(0, false);
    }
    day.model.minimize(objective);
    CpSolver solver = new CpSolver();
    var p = solver.getParameters();
    p.setNumWorkers(limits.threads()).setRandomSeed(limits.seed()).setLinearizationLevel(2);
    p.setMaxTimeInSeconds(seconds);
    if (limits.threads() > 1) {
      subsolvers.forEach(p::addSubsolvers);
    }
    AtomicReference<@Nullable RuntimeException> fault = new AtomicReference<>();
    CpSolverSolutionCallback callback =
        new CpSolverSolutionCallback() {
          @Override
          public void onSolutionCallback() {
            // An exception must not cross the native border: it would end the process.
            try {
              solution.accept(day.read(this::value));
              bound.accept(ceiling(bestObjectiveBound()));
            } catch (RuntimeException e) {
              fault.compareAndSet(null, e);
              stopSearch();
            }
          }
        };
    Timer watch = new Timer("day-search-watch", true);
    watch.schedule(
        new TimerTask() {
          @Override
          public void run() {
            if (stopped.getAsBoolean()) {
              solver.stopSearch();
            }
          }
        },
        WATCH_MS,
        WATCH_MS);
    CpSolverStatus status;
    try {
      status = solver.solve(day.model, callback);
    } finally {
      watch.cancel();
    }
    RuntimeException thrown = fault.get();
    if (thrown != null) {
      throw thrown;
    }
    if (status == CpSolverStatus.MODEL_INVALID) {
      throw new IllegalStateException("The solver rejects the model: " + day.model.validate());
    }
    boolean none = status == CpSolverStatus.INFEASIBLE;
    return new Outcome(
        none ? Integer.MAX_VALUE : ceiling(solver.bestObjectiveBound()),
        none || status == CpSolverStatus.OPTIMAL);
  }

  /** Objectives are whole numbers, so a bound may be rounded up. */
  private static int ceiling(double bound) {
    return (int) Math.ceil(Math.max(-1e9, bound) - 1e-6);
  }
}
