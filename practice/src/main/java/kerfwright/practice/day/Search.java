package kerfwright.practice.day;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;

/**
 * One run of the solver: its settings, its time limit, its news, and how it is stopped.
 *
 * <p>Bounds are read when a solution is found and at the end. The solver's own callback for bounds
 * is left alone: version 9.15 keeps no global reference to it and brings the virtual machine down.
 */
final class Search {
  /** Full linear relaxation: it alone closes the flow goals, other strategies only take threads. */
  static final List<String> RELAXATION = List.of("max_lp");

  /** The last goal is closed from below. */
  static final List<String> FROM_BELOW = List.of("max_lp", "objective_lb_search_max_lp");

  private final SearchLimits limits;
  private final BooleanSupplier stopped;

  Search(SearchLimits limits, BooleanSupplier stopped) {
    this.limits = limits;
    this.stopped = stopped;
  }

  /**
   * What came out.
   *
   * @param found whether there is a solution
   * @param bound proven bound of the objective
   * @param proven whether the search is closed: the best is optimal, or there is none
   */
  record Outcome(boolean found, int bound, boolean proven) {}

  /** Minimises; each solution is handed over as it is found, the last being the best. */
  Outcome run(
      CpModel model,
      List<String> subsolvers,
      double seconds,
      Consumer<ToLongFunction<IntVar>> solution,
      IntConsumer bound) {
    if (seconds <= 0 || stopped.getAsBoolean()) {
      return new Outcome(false, Integer.MIN_VALUE, false);
    }
    CpSolver solver = new CpSolver();
    var p = solver.getParameters();
    p.setNumWorkers(limits.threads()).setRandomSeed(limits.seed()).setLinearizationLevel(2);
    if (limits.threads() > 1) {
      subsolvers.forEach(p::addSubsolvers);
    }
    if (seconds < 1e6) {
      p.setMaxTimeInSeconds(seconds);
    }
    AtomicReference<@Nullable RuntimeException> fault = new AtomicReference<>();
    CpSolverStatus status;
    Watch watch = new Watch(solver);
    try {
      status =
          solver.solve(
              model,
              new CpSolverSolutionCallback() {
                @Override
                public void onSolutionCallback() {
                  // An exception must not cross the native border: it would end the process.
                  try {
                    solution.accept(this::value);
                    bound.accept(ceiling(bestObjectiveBound()));
                  } catch (RuntimeException e) {
                    fault.compareAndSet(null, e);
                    stopSearch();
                  }
                }
              });
    } finally {
      watch.close();
    }
    RuntimeException thrown = fault.get();
    if (thrown != null) {
      throw thrown;
    }
    if (status == CpSolverStatus.MODEL_INVALID) {
      throw new IllegalStateException("The solver rejects the model: " + model.validate());
    }
    boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    boolean closed = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.INFEASIBLE;
    int best =
        status == CpSolverStatus.INFEASIBLE
            ? Integer.MAX_VALUE
            : ceiling(solver.bestObjectiveBound());
    return new Outcome(found, best, closed);
  }

  /** Objectives are whole numbers, so a bound may be rounded up. */
  private static int ceiling(double bound) {
    return (int) Math.ceil(Math.max(-1e9, bound) - 1e-6);
  }

  /** Stops the solver soon after the caller asks for it. */
  private final class Watch {
    private final ScheduledExecutorService timer;

    Watch(CpSolver solver) {
      timer =
          Executors.newSingleThreadScheduledExecutor(
              task -> {
                Thread t = new Thread(task, "day-search-watch");
                t.setDaemon(true);
                return t;
              });
      timer.scheduleWithFixedDelay(
          () -> {
            if (stopped.getAsBoolean()) {
              solver.stopSearch();
            }
          },
          50,
          50,
          TimeUnit.MILLISECONDS);
    }

    void close() {
      timer.shutdownNow();
    }
  }
}
