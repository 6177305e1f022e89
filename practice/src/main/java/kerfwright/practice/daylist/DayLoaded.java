package kerfwright.practice.daylist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.InvalidDayException;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.TrayPlace;
import kerfwright.schedule.search.Replanner;

/**
 * Follows a plan through the loads really started: they are fixed, whatever the plan foresaw, and
 * the rest follows. Where plan and loads contradict each other, what came first stands; a piece
 * that by the plan could not be in its load yet is planned on without it.
 */
public final class DayLoaded {
  private static final double REPAIR_S = 0.4;

  private final Day day;
  private FixedFacts happened;

  private DayLoaded(Day day, int nowMin) {
    this.day = day;
    happened = new FixedFacts(nowMin, List.of(), List.of());
  }

  /**
   * The day as it is now.
   *
   * @param before the plan so far
   * @param real every load started so far, by start; see {@link LoadsOfDay}
   */
  public static PlannedDay of(PlannedDay before, List<SteriliserLoad> real) {
    Day day = before.problem();
    int last = real.stream().mapToInt(SteriliserLoad::startMin).max().orElse(0);
    int now = Math.max(day.facts().nowMin(), last);
    List<SteriliserLoad> loads = new ArrayList<>(foreseenBeforeOpening(day, real));
    loads.addAll(real);
    DayLoaded loaded = new DayLoaded(day, now);
    loaded.follow(loads, DayFollowed.begun(before, now).trays());
    Day changed = day.withFacts(loaded.happened);
    Replanner.Replan again =
        Replanner.replan(changed, before.plan(), SearchLimits.ofSeconds(REPAIR_S));
    return new PlannedDay(changed, before.pieces(), again.plan(), List.of());
  }

  /** Loads before opening that the plan took for started, while none really was. */
  private static List<SteriliserLoad> foreseenBeforeOpening(Day day, List<SteriliserLoad> real) {
    return real.stream().anyMatch(load -> load.startMin() < 0)
        ? List.of()
        : day.facts().loads().stream().filter(load -> load.startMin() < 0).toList();
  }

  private record Step(int atMin, Runnable taken) {}

  /** In the order of time; at one minute the load comes first. */
  private void follow(List<SteriliserLoad> started, List<TrayPlace> laid) {
    Stream.concat(
            started.stream().map(load -> new Step(load.startMin(), () -> take(load))),
            laid.stream().map(tray -> new Step(startMin(tray), () -> take(tray))))
        .sorted(Comparator.comparingInt(Step::atMin))
        .forEachOrdered(step -> step.taken().run());
  }

  private int startMin(TrayPlace tray) {
    return day.appointment(tray.appointment()).map(Appointment::startMin).orElse(0);
  }

  private boolean take(TrayPlace tray) {
    return happens(List.of(), List.of(tray));
  }

  private void take(SteriliserLoad load) {
    FixedFacts before = happened;
    List<InstrumentRef> inside = new ArrayList<>();
    for (InstrumentRef ref : load.instruments()) {
      inside.add(ref);
      if (!happens(List.of(new SteriliserLoad(load.startMin(), inside)), List.of())) {
        inside.remove(ref);
      }
      happened = before;
    }
    // not even an empty one where more sterilisers run than the day knows of
    happens(List.of(new SteriliserLoad(load.startMin(), inside)), List.of());
  }

  /** Adds facts where they can follow from those so far. */
  private boolean happens(List<SteriliserLoad> loads, List<TrayPlace> trays) {
    FixedFacts more =
        new FixedFacts(
            happened.nowMin(),
            Stream.concat(happened.loads().stream(), loads.stream()).toList(),
            Stream.concat(happened.trays().stream(), trays.stream()).toList());
    try {
      day.withFacts(more);
    } catch (InvalidDayException contradicts) {
      return false;
    }
    happened = more;
    return true;
  }
}
