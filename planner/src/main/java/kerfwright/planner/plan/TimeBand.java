package kerfwright.planner.plan;

import kerfwright.quantity.Message;

/**
 * An absolute time in words as wide as it is known; the figure stands behind them. A laboratory, a
 * hand and a batch of instruments are off by the same factor all the time, so that the figure alone
 * would promise too much.
 *
 * @param seconds the time with both levels of scatter
 */
public record TimeBand(Estimate seconds) {
  private static final double SECONDS = 30;
  private static final double MINUTE = 60;
  private static final double SOME_MINUTES = 600;

  /** "seconds", "under a minute", "some minutes", or from which to which. */
  public Message words() {
    return Message.of("figure.time-" + key());
  }

  private String key() {
    double low = seconds.low();
    double high = seconds.high();
    if (high <= SECONDS) {
      return "seconds";
    }
    if (high <= MINUTE) {
      return "under-a-minute";
    }
    if (high <= SOME_MINUTES) {
      return low >= MINUTE ? "some-minutes" : "seconds-to-minutes";
    }
    return low >= MINUTE ? "minutes-or-more" : "seconds-to-long";
  }
}
