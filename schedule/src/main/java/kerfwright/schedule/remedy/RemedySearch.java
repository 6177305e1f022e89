package kerfwright.schedule.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.DayProgress;
import kerfwright.schedule.Goal;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.search.DayPlanner;

/**
 * Finds the cheapest remedies of a day's shortages. Each is planned for and judged like the day
 * itself; only those that leave fewer shortages are told.
 */
public final class RemedySearch {
  /** Most time one remedy is planned for. */
  private static final double ONE_REMEDY_S = 2;

  private final DayPlanner planner;

  public RemedySearch(DayPlanner planner) {
    this.planner = planner;
  }

  /**
   * Remedies by cost.
   *
   * @param plan the plan of the day
   * @param limits time for all of them; where it runs out, the costly ones were not looked at
   * @param progress asked whether to stop, and told of plans of changed days
   * @param found told of each remedy as it is found
   */
  public List<RemedyResult> search(
      Day day,
      DayPlan plan,
      SearchLimits limits,
      DayProgress progress,
      Consumer<RemedyResult> found) {
    long started = System.nanoTime();
    List<RemedyResult> results = new ArrayList<>();
    if (plan.shortages().isEmpty()) {
      return results;
    }
    for (Remedy idea : new RemedyIdeas(day, plan).all()) {
      double left = limits.seconds() - (System.nanoTime() - started) / 1e9;
      if (left <= 0 || progress.stopped()) {
        break;
      }
      Optional<Day> changed = superfluous(idea, results) ? Optional.empty() : idea.applied(day);
      if (changed.isEmpty()) {
        continue;
      }
      SearchLimits one =
          new SearchLimits(Math.min(left, ONE_REMEDY_S), limits.threads(), limits.seed());
      DayPlan after = planner.withoutWear(changed.get(), one, progress);
      if (after.value(Goal.SHORTAGES) < plan.value(Goal.SHORTAGES)) {
        RemedyResult result = new RemedyResult(idea, idea.costMin(), changed.get(), after);
        results.add(result);
        found.accept(result);
      }
    }
    results.sort(
        Comparator.comparingDouble(RemedyResult::costMin)
            .thenComparingInt(RemedyResult::shortagesAfter)
            .thenComparingInt(RemedyResult::loadsAfter));
    return results;
  }

  /** Buying more of a type of which fewer are enough already. */
  private static boolean superfluous(Remedy idea, List<RemedyResult> results) {
    return idea instanceof Remedy.BuyMore more
        && results.stream()
            .anyMatch(
                r ->
                    r.remedy() instanceof Remedy.BuyMore fewer
                        && fewer.type().equals(more.type())
                        && r.plan().shortages().stream()
                            .noneMatch(s -> s.type().equals(more.type())));
  }
}
