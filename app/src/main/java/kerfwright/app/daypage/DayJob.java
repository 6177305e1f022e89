package kerfwright.app.daypage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import kerfwright.practice.daylist.DayFollowed;
import kerfwright.practice.daylist.KeptRemedy;
import kerfwright.practice.daylist.PlannedDay;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.DayProgress;
import kerfwright.schedule.Goal;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.remedy.RemedySearch;
import kerfwright.schedule.search.DayPlanner;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** One search for the plan of a day beside the pages: its best so far, and the way to stop it. */
final class DayJob implements DayProgress, Runnable {
  private static final Logger LOG = LoggerFactory.getLogger(DayJob.class);
  private static final SearchLimits PLAN = SearchLimits.ofSeconds(20);
  private static final SearchLimits REMEDIES = SearchLimits.ofSeconds(30);

  /** Where the job is. */
  enum Stage {
    PLANNING,
    REMEDIES,
    DONE,
    FAILED
  }

  private final LocalDate date;
  private final Day problem;
  private final Map<String, List<String>> pieces;
  private final Predicate<PlannedDay> keep;
  private final long started = System.nanoTime();
  private final Map<Goal, Integer> bounds = new EnumMap<>(Goal.class);
  private final List<KeptRemedy> remedies = new ArrayList<>();
  private @Nullable DayPlan best;
  private Stage stage = Stage.PLANNING;
  private volatile boolean stop;
  private double seconds;

  /**
   * @param keep keeps a plan with the day; false where the day is another one by now
   */
  DayJob(
      LocalDate date, Day problem, Map<String, List<String>> pieces, Predicate<PlannedDay> keep) {
    this.date = date;
    this.problem = problem;
    this.pieces = pieces;
    this.keep = keep;
  }

  /** Where the job is and what it has so far. */
  record State(
      Stage stage, @Nullable PlannedDay planned, Map<Goal, Integer> bounds, double seconds) {
    boolean running() {
      return stage == Stage.PLANNING || stage == Stage.REMEDIES;
    }
  }

  synchronized State state() {
    DayPlan plan = best;
    double s = stage == Stage.PLANNING ? (System.nanoTime() - started) / 1e9 : seconds;
    return new State(
        stage,
        plan == null ? null : new PlannedDay(problem, pieces, plan, remedies),
        Map.copyOf(bounds),
        s);
  }

  void stop() {
    stop = true;
  }

  @Override
  public void run() {
    try {
      DayPlanner planner = DayPlanner.forThisMachine();
      DayPlan found = planner.plan(problem, PLAN, this);
      PlannedDay planned = DayFollowed.fresh(problem, pieces, found);
      at(Stage.REMEDIES, planned.plan());
      boolean kept = keep.test(planned);
      if (kept && !stop && !planned.plan().shortages().isEmpty()) {
        new RemedySearch(planner)
            .search(
                problem, planned.plan(), REMEDIES, remedyProgress(), r -> add(KeptRemedy.of(r)));
        if (!keep.test(planned.with(problem, planned.plan(), sorted()))) {
          LOG.info("The day of {} changed while remedies were sought", date);
        }
      }
      at(Stage.DONE, planned.plan());
    } catch (RuntimeException | LinkageError failed) {
      LOG.error("The plan of {} failed", date, failed);
      at(Stage.FAILED, null);
    }
  }

  private DayProgress remedyProgress() {
    return new DayProgress() {
      @Override
      public void better(DayPlan plan) {
        // plans of changed days are judged at their end
      }

      @Override
      public boolean stopped() {
        return stop;
      }
    };
  }

  private synchronized void at(Stage next, @Nullable DayPlan plan) {
    if (stage == Stage.PLANNING) {
      seconds = (System.nanoTime() - started) / 1e9;
    }
    stage = next;
    best = plan == null ? best : plan;
  }

  private synchronized void add(KeptRemedy told) {
    remedies.add(told);
    remedies.sort(java.util.Comparator.comparingDouble(KeptRemedy::costMin));
  }

  private synchronized List<KeptRemedy> sorted() {
    return List.copyOf(remedies);
  }

  @Override
  public synchronized void better(DayPlan plan) {
    best = plan;
  }

  @Override
  public synchronized void bound(Goal goal, int bound) {
    bounds.merge(goal, bound, Math::max);
  }

  @Override
  public boolean stopped() {
    return stop;
  }
}
