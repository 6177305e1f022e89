package kerfwright.app.record;

import java.time.Clock;
import java.time.Instant;
import kerfwright.practice.record.ChainCheck;
import kerfwright.practice.record.CutRecord;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Looks at the whole chain on a thread of its own; one at a time. */
public final class Verification {
  private static final Logger LOG = LoggerFactory.getLogger(Verification.class);

  /**
   * How far it is.
   *
   * @param running true while it looks
   * @param looked entries looked at
   * @param of entries there were at the start
   * @param result what was found, null before the first end
   * @param at when that was found, or null
   */
  public record Progress(
      boolean running, long looked, long of, @Nullable ChainCheck result, @Nullable Instant at) {}

  private final CutRecord record;
  private final Clock clock;
  private volatile Progress progress = new Progress(false, 0, 0, null, null);

  Verification(CutRecord record, Clock clock) {
    this.record = record;
    this.clock = clock;
  }

  Progress progress() {
    return progress;
  }

  synchronized void start() {
    if (progress.running()) {
      return;
    }
    long of = record.end().number();
    progress = new Progress(true, 0, of, null, null);
    Thread thread = new Thread(() -> look(of), "verification");
    thread.setDaemon(true);
    thread.start();
  }

  private void look(long of) {
    try {
      ChainCheck check =
          ChainCheck.of(record, looked -> progress = new Progress(true, looked, of, null, null));
      progress = new Progress(false, of, of, check, clock.instant());
    } catch (RuntimeException failed) {
      LOG.error("The record could not be verified", failed);
      progress = new Progress(false, 0, of, null, null);
    }
  }
}
