package kerfwright.practice.daylist;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.TrayPlace;
import kerfwright.schedule.search.Replanner;

/**
 * A planned day after loads were really started: they are fixed, whatever the plan foresaw, and the
 * rest follows.
 *
 * @param planned the day as it is now
 * @param apart pieces that went into a load in which, by the plan, they could not be yet; the plan
 *     goes on without them in it
 */
public record DayLoaded(PlannedDay planned, List<InstrumentRef> apart) {
  private static final double REPAIR_S = 0.4;

  public DayLoaded {
    apart = List.copyOf(apart);
  }

  /**
   * Follows a plan through the loads really started. Where plan and loads contradict each other,
   * what came first stands.
   *
   * @param before the plan so far
   * @param real every load started so far, by start; see {@link LoadsOfDay}
   */
  public static DayLoaded of(PlannedDay before, List<SteriliserLoad> real) {
    Day day = before.problem();
    int last = real.stream().mapToInt(SteriliserLoad::startMin).max().orElse(0);
    int now = Math.max(day.facts().nowMin(), last);
    Set<TrayPlace> begun = new LinkedHashSet<>(day.facts().trays());
    begun.addAll(Replanner.factsAt(day, before.plan(), now).trays());
    List<SteriliserLoad> loads = new ArrayList<>(foreseenBeforeOpening(day, real));
    loads.addAll(real);
    Happened happened = new Happened(day, now);
    happened.follow(loads, List.copyOf(begun));
    Day changed = day.withFacts(happened.facts());
    DayPlan rest = without(before.plan(), day, real);
    DayPlan plan = Replanner.replan(changed, rest, SearchLimits.ofSeconds(REPAIR_S)).plan();
    return new DayLoaded(
        new PlannedDay(changed, before.pieces(), plan, List.of()), happened.apart());
  }

  /** Loads before opening that the plan took for started, while none really was. */
  private static List<SteriliserLoad> foreseenBeforeOpening(Day day, List<SteriliserLoad> real) {
    return real.stream().anyMatch(load -> load.startMin() < 0)
        ? List.of()
        : day.facts().loads().stream().filter(load -> load.startMin() < 0).toList();
  }

  /**
   * The plan without what was started in its place: of each load newly started its nearest kin, and
   * whatever no steriliser is free for.
   */
  private static DayPlan without(DayPlan plan, Day day, List<SteriliserLoad> real) {
    List<SteriliserLoad> open = new ArrayList<>(plan.loads());
    open.removeAll(day.facts().loads());
    for (SteriliserLoad load : real) {
      if (!day.facts().loads().contains(load)) {
        kin(open, load).ifPresent(open::remove);
      }
    }
    open.removeIf(
        load -> real.stream().filter(one -> together(day, one, load)).count() >= day.sterilisers());
    return new DayPlan(plan.trays(), open, plan.shortages(), plan.goals(), plan.solver());
  }

  private static boolean together(Day day, SteriliserLoad one, SteriliserLoad other) {
    return Math.abs(one.startMin() - other.startMin()) < day.loadMin();
  }

  /** The planned load that shares most with one started, if it shares anything. */
  private static Optional<SteriliserLoad> kin(List<SteriliserLoad> open, SteriliserLoad load) {
    SteriliserLoad best = null;
    long most = 0;
    for (SteriliserLoad one : open) {
      long shared = one.instruments().stream().filter(load.instruments()::contains).count();
      if (shared > most) {
        most = shared;
        best = one;
      }
    }
    return Optional.ofNullable(best);
  }
}
