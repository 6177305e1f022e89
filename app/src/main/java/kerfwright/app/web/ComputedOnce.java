package kerfwright.app.web;

import java.util.Map;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * Computes what pages ask for on few threads, so that others can log meanwhile; who asks for what
 * is being computed already waits for that.
 *
 * @param <K> what is asked for
 */
final class ComputedOnce<K> {
  private static final int QUEUE = 200;

  private static final int LOOKED_EVERY_MS = 300;

  private final Map<K, Awaited> running = new ConcurrentHashMap<>();
  private final ThreadPoolExecutor workers;

  ComputedOnce(int threads) {
    this.workers =
        new ThreadPoolExecutor(
            threads,
            threads,
            10,
            TimeUnit.SECONDS,
            new ArrayBlockingQueue<>(QUEUE),
            run -> {
              Thread thread = new Thread(run, "plan");
              thread.setDaemon(true);
              return thread;
            },
            new ThreadPoolExecutor.CallerRunsPolicy());
    workers.allowCoreThreadTimeOut(true);
  }

  /** All cores but one. */
  static <K> ComputedOnce<K> leavingACore() {
    return new ComputedOnce<>(Math.max(1, Runtime.getRuntime().availableProcessors() - 1));
  }

  /** What is computed, and how many wait for it. */
  private static final class Awaited {
    final FutureTask<Object> task;
    final AtomicBoolean begun = new AtomicBoolean();
    int waiting;

    Awaited(Supplier<?> work) {
      this.task = new FutureTask<>(work::get);
    }
  }

  /** As {@link #get(Object, Supplier, BooleanSupplier)}, for whoever waits in any case. */
  <V> V get(K key, Supplier<V> work) {
    return get(key, work, () -> false);
  }

  /**
   * The same key gets a value of the same kind, whoever asks. Who has gone is noticed while they
   * wait; what nobody waits for any more is not begun, or stopped.
   *
   * @param gone whether whoever asks has gone meanwhile
   */
  @SuppressWarnings("unchecked")
  <V> V get(K key, Supplier<V> work, BooleanSupplier gone) {
    Awaited mine =
        running.compute(
            key,
            (any, before) -> {
              Awaited one = before == null ? new Awaited(work) : before;
              one.waiting++;
              return one;
            });
    if (mine.begun.compareAndSet(false, true)) {
      workers.execute(mine.task);
    }
    try {
      return (V) await(mine, gone);
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw new IllegalStateException(failed.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("The server is stopping", stopped);
    } finally {
      leave(key, mine);
    }
  }

  private static Object await(Awaited mine, BooleanSupplier gone)
      throws ExecutionException, InterruptedException {
    while (true) {
      try {
        return mine.task.get(LOOKED_EVERY_MS, TimeUnit.MILLISECONDS);
      } catch (TimeoutException goesOn) {
        if (gone.getAsBoolean()) {
          throw new CancellationException("whoever asked has gone");
        }
      }
    }
  }

  private void leave(K key, Awaited mine) {
    running.computeIfPresent(
        key,
        (any, now) -> {
          if (now != mine || --mine.waiting > 0) {
            return now;
          }
          mine.task.cancel(true);
          workers.remove(mine.task);
          return null;
        });
  }
}
