package kerfwright.planner.uncertainty;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Work in parts, each done once by whoever is free: the machine's other cores from the start, the
 * caller when it has nothing else to do.
 */
final class Parts {
  private final int count;
  private final Supplier<IntConsumer> workers;
  private final AtomicInteger next = new AtomicInteger();
  private final CountDownLatch done;
  private final AtomicReference<@Nullable RuntimeException> failure = new AtomicReference<>();

  private Parts(int count, Supplier<IntConsumer> workers) {
    this.count = count;
    this.workers = workers;
    this.done = new CountDownLatch(count);
  }

  /**
   * Begins on the other cores.
   *
   * @param workers one worker for each who takes part, never used by two at once
   */
  static Parts begin(int count, Supplier<IntConsumer> workers) {
    Parts parts = new Parts(count, workers);
    int others = Math.min(count, Runtime.getRuntime().availableProcessors()) - 1;
    for (int i = 0; i < others; i++) {
      ForkJoinPool.commonPool().execute(parts::work);
    }
    return parts;
  }

  /** What nobody has begun is left undone. */
  void leave() {
    while (take() < count) {
      done.countDown();
    }
  }

  /** Does what is left and waits for what others do. */
  void finish() {
    work();
    try {
      done.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while parts were done", e);
    }
    RuntimeException failed = failure.get();
    if (failed != null) {
      throw failed;
    }
  }

  private void work() {
    IntConsumer worker = null;
    for (int part = take(); part < count; part = take()) {
      try {
        worker = worker == null ? workers.get() : worker;
        worker.accept(part);
      } catch (RuntimeException e) {
        failure.set(e);
      } finally {
        done.countDown();
      }
    }
  }

  private int take() {
    return next.getAndIncrement();
  }
}
