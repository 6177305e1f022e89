package kerfwright.app.daypage;

import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import kerfwright.practice.horizon.StockCurve;
import kerfwright.practice.horizon.StockStudy;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** One study of the usual week beside the pages. */
final class WeekJob implements Runnable {
  private static final Logger LOG = LoggerFactory.getLogger(WeekJob.class);
  private static final int WEEKS = 40;
  private static final long SEED = 1;

  private final WeekDays days;
  private final Map<String, Double> prices;
  private final AtomicInteger points = new AtomicInteger();
  private volatile @Nullable StockCurve curve;
  private volatile boolean failed;
  private volatile boolean stop;

  /**
   * @param prices what one instrument of a type costs; 1 where nobody has said
   */
  WeekJob(WeekDays days, Map<String, Double> prices) {
    this.days = days;
    this.prices = prices;
  }

  WeekDays days() {
    return days;
  }

  /** Points of the curve known so far. */
  int points() {
    return points.get();
  }

  /** The curve, once the study has ended. */
  @Nullable StockCurve curve() {
    return curve;
  }

  boolean failed() {
    return failed;
  }

  void stop() {
    stop = true;
  }

  @Override
  public void run() {
    try {
      curve =
          new StockStudy(days.days(), type -> prices.getOrDefault(type, 1.0), WEEKS, SEED)
              .curve(point -> points.incrementAndGet(), () -> stop);
    } catch (RuntimeException broken) {
      LOG.error("The study of the usual week failed", broken);
      failed = true;
    }
  }
}
