package kerfwright.app.web;

import java.util.Map;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/**
 * Computes what pages ask for on few threads, so that others can log meanwhile; who asks for what
 * is being computed already waits for that.
 *
 * @param <K> what is asked for
 */
final class ComputedOnce<K> {
  private static final int QUEUE = 200;

  private final Map<K, FutureTask<?>> running = new ConcurrentHashMap<>();
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

  /** The same key gets a value of the same kind, whoever asks. */
  @SuppressWarnings("unchecked")
  <V> V get(K key, Supplier<V> work) {
    FutureTask<V> mine = new FutureTask<>(work::get);
    FutureTask<?> before = running.putIfAbsent(key, mine);
    if (before == null) {
      workers.execute(mine);
    }
    FutureTask<V> awaited = before == null ? mine : (FutureTask<V>) before;
    try {
      return awaited.get();
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw new IllegalStateException(failed.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("The server is stopping", stopped);
    } finally {
      running.remove(key, awaited);
    }
  }
}
