package kerfwright.practice.daylist;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.Shortage;
import kerfwright.schedule.Stock;
import kerfwright.schedule.TrayPlace;
import kerfwright.schedule.search.FreshTrays;
import kerfwright.schedule.search.Replanner;

/**
 * A planned day after its list changed: what has happened stays, and the rest follows the plan so
 * far as closely as it can.
 *
 * @param planned the day as it is now
 * @param changedTrays appointments on whose tray something is another or missing
 * @param newlyShort shortages that were not there before
 * @param ended shortages that are gone
 */
public record DayFollowed(
    PlannedDay planned,
    List<String> changedTrays,
    List<Shortage> newlyShort,
    List<Shortage> ended) {
  /** Most time the plan is repaired for. */
  private static final double REPAIR_S = 0.4;

  /**
   * Follows a plan through a changed list.
   *
   * @param before the plan so far
   * @param fresh the list as it is now put to the drawer, for types the plan did not know too
   * @param nowMin minute of the day; what the plan has begun by then is fixed
   */
  public static DayFollowed of(PlannedDay before, DrawerDay fresh, int nowMin) {
    Day old = before.problem();
    Map<String, List<String>> pieces = new HashMap<>(before.pieces());
    List<Stock> stock = new ArrayList<>(old.stock());
    for (Stock s : fresh.problem().stock()) {
      if (!pieces.containsKey(s.type())) {
        stock.add(s);
        pieces.put(s.type(), fresh.pieces().getOrDefault(s.type(), List.of()));
      }
    }
    Day changed =
        old.withFacts(FixedFacts.NONE)
            .withAppointments(List.of())
            .withStock(stock)
            .withAppointments(fresh.problem().appointments())
            .withFacts(kept(begun(before, nowMin), fresh.problem()));
    Replanner.Replan again =
        Replanner.replan(changed, before.plan(), SearchLimits.ofSeconds(REPAIR_S));
    DayPlan plan = again.plan();
    Set<Shortage> was = new LinkedHashSet<>(before.plan().shortages());
    Set<Shortage> is = new LinkedHashSet<>(plan.shortages());
    return new DayFollowed(
        new PlannedDay(changed, pieces, plan, List.of()),
        again.changed().stream().filter(id -> changed.appointment(id).isPresent()).toList(),
        is.stream().filter(s -> !was.contains(s)).toList(),
        was.stream().filter(s -> !is.contains(s)).toList());
  }

  /** What was fixed, and what the plan has begun since. */
  static FixedFacts begun(PlannedDay day, int nowMin) {
    return day.problem().facts().and(Replanner.factsAt(day.problem(), day.plan(), nowMin));
  }

  /** Facts without the trays of appointments that are gone. */
  private static FixedFacts kept(FixedFacts facts, Day day) {
    Set<String> ids = new LinkedHashSet<>();
    day.appointments().forEach(a -> a.needs().forEach(type -> ids.add(a.id() + "\n" + type)));
    return new FixedFacts(
        facts.nowMin(),
        facts.loads(),
        facts.trays().stream()
            .filter(t -> ids.contains(t.appointment() + "\n" + t.instrument().type()))
            .toList());
  }

  /** The same day with one tray laid as planned. */
  public static PlannedDay laid(PlannedDay day, String appointment) {
    List<TrayPlace> tray =
        day.plan().trays().stream().filter(t -> t.appointment().equals(appointment)).toList();
    FixedFacts laid = new FixedFacts(0, List.of(), tray);
    Day problem = day.problem().withFacts(day.problem().facts().and(laid));
    return day.with(problem, day.plan(), day.remedies());
  }

  /** The same plan with fresh instruments where it matters. */
  public static PlannedDay fresh(Day problem, Map<String, List<String>> pieces, DayPlan plan) {
    return new PlannedDay(problem, pieces, FreshTrays.laid(problem, plan), List.of());
  }
}
