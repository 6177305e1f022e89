package kerfwright.app.daypage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.practice.horizon.StockCurve;
import kerfwright.practice.horizon.StockPoint;
import kerfwright.practice.horizon.StockStudy;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** One study of the usual week beside the pages. */
final class WeekJob implements Runnable {
  private static final Logger LOG = LoggerFactory.getLogger(WeekJob.class);
  static final int WEEKS = 40;
  static final long SEED = 1;

  private final WeekDays days;
  private final Map<String, Double> prices;
  private final List<StockPoint> points = new ArrayList<>();
  private @Nullable StockCurve curve;
  private boolean failed;
  private volatile boolean stop;

  /**
   * @param prices what one instrument of a type costs; 1 where nobody has said
   */
  WeekJob(WeekDays days, Map<String, Double> prices) {
    this.days = days;
    this.prices = prices;
  }

  /** What is known so far; the curve once the study has ended. */
  record State(List<StockPoint> points, @Nullable StockCurve curve, boolean failed) {
    boolean running() {
      return curve == null && !failed;
    }
  }

  synchronized State state() {
    return new State(List.copyOf(points), curve, failed);
  }

  WeekDays days() {
    return days;
  }

  void stop() {
    stop = true;
  }

  @Override
  public void run() {
    try {
      StockCurve made =
          new StockStudy(days.days(), type -> prices.getOrDefault(type, 1.0), WEEKS, SEED)
              .curve(this::add, () -> stop);
      synchronized (this) {
        curve = made;
      }
    } catch (RuntimeException broken) {
      LOG.error("The study of the usual week failed", broken);
      synchronized (this) {
        failed = true;
      }
    }
  }

  private synchronized void add(StockPoint point) {
    points.add(point);
  }
}
