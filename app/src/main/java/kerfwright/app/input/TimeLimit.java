package kerfwright.app.input;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import kerfwright.quantity.Message;

/** A computation that ends in time, or is told to have taken too long. */
public final class TimeLimit {
  private TimeLimit() {}

  /**
   * Runs it on a thread that ends with the program.
   *
   * @param what what was asked for, to name in the message
   * @param shorter what makes it shorter, in words
   */
  public static <T> T within(Duration limit, String what, Message shorter, Callable<T> work)
      throws BadInput {
    FutureTask<T> task = new FutureTask<>(work);
    Thread thread = new Thread(task, "limited");
    thread.setDaemon(true);
    thread.start();
    try {
      return task.get(limit.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException late) {
      task.cancel(true);
      throw new BadInput(what, Message.of("fault.too-long", (int) limit.toSeconds(), shorter));
    } catch (InterruptedException stopped) {
      task.cancel(true);
      Thread.currentThread().interrupt();
      throw new BadInput(what, Message.of("fault.stopped"));
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof BadInput bad) {
        throw bad;
      }
      if (failed.getCause() instanceof OutOfMemoryError) {
        throw new BadInput(what, Message.of("fault.too-large", shorter));
      }
      if (failed.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw new IllegalStateException(failed.getCause());
    }
  }
}
