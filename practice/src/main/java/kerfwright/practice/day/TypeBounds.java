package kerfwright.practice.day;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntUnaryOperator;

/**
 * Bounds of each type by itself, with a load at every slot and room for all: what no plan can beat.
 * Their sum bounds the day. Small models, solved side by side with one thread each.
 */
final class TypeBounds {
  private final DayView view;
  private final Search search;
  private final int threads;

  TypeBounds(DayView view, Search oneThread, int threads) {
    this.view = view;
    search = oneThread;
    this.threads = threads;
  }

  /** Fewest shortages of each type. */
  int[] shortages(double seconds) {
    return each(
        k -> {
          CpModel model = new CpModel();
          ReadyFlow flow = new ReadyFlow(model, view, view.types.get(k), false);
          LinearExprBuilder sum = LinearExpr.newBuilder();
          flow.shortage.forEach(sum::add);
          model.minimize(sum);
          return bound(model, seconds);
        },
        seconds);
  }

  /** Least unevenness of each type, whatever is short. */
  int[] wear(double seconds) {
    return each(
        k -> {
          TypeView type = view.types.get(k);
          if (type.units == 0 || type.demands == 0) {
            return type.unevennessUnused();
          }
          CpModel model = new CpModel();
          WearFlow flow = new WearFlow(model, view, type);
          model.minimize(flow.unevenness);
          return bound(model, seconds);
        },
        seconds);
  }

  private int bound(CpModel model, double seconds) {
    return Math.max(0, search.run(model, Search.RELAXATION, seconds, v -> {}, b -> {}).bound());
  }

  /** One bound a type; a type not reached in time is bounded by 0. */
  private int[] each(IntUnaryOperator one, double seconds) {
    int[] bounds = new int[view.types.size()];
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      long until = System.nanoTime() + (long) (seconds * 1e9);
      List<Future<Integer>> jobs = new ArrayList<>();
      for (int k = 0; k < bounds.length; k++) {
        int type = k;
        jobs.add(pool.submit(() -> System.nanoTime() < until ? one.applyAsInt(type) : 0));
      }
      for (int k = 0; k < bounds.length; k++) {
        bounds[k] = jobs.get(k).get();
      }
      return bounds;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return new int[bounds.length];
    } catch (ExecutionException e) {
      throw new IllegalStateException("a bound of one type failed", e);
    } finally {
      pool.shutdownNow();
    }
  }
}
