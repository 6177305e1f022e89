package kerfwright.practice.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Lays worn instruments where little is asked and fresh ones where it matters, without touching the
 * goals of a plan: at a minute when two instruments of a type both lie clean, they may change roles
 * for the rest of the day.
 *
 * <p>First the needs that ask more of an instrument's life than it has left are made as few as
 * roles allow; then the sum over the needs of (share of a life asked) times (share of a life left)
 * is made large, which lays the freshest where most is asked (rearrangement inequality). Roles are
 * changed pair by pair until no change helps, so the sum need not be the greatest of all.
 */
public final class FreshTrays {
  private FreshTrays() {}

  /**
   * A need that asks more of its instrument than is left.
   *
   * @param place appointment and instrument
   * @param asked share of a life the step uses
   * @param left share of a life the instrument has left
   */
  public record Worn(TrayPlace place, double asked, double left) {}

  /** The same plan with roles changed. */
  public static DayPlan laid(DayProblem day, DayPlan plan) {
    if (day.appointments().stream().allMatch(a -> a.details().isEmpty())) {
      return plan;
    }
    Roles roles = new Roles(day, plan);
    day.stock().forEach(roles::improve);
    return roles.plan();
  }

  /** Needs that ask more than their instrument has left, in the plan as it is. */
  public static List<Worn> worn(DayProblem day, DayPlan plan) {
    Map<String, Appointment> byId = new HashMap<>();
    day.appointments().forEach(a -> byId.put(a.id(), a));
    Map<String, Stock> byType = new HashMap<>();
    day.stock().forEach(s -> byType.put(s.type(), s));
    Map<InstrumentRef, Integer> uses = new HashMap<>();
    List<Worn> worn = new ArrayList<>();
    plan.trays().stream()
        .sorted(
            java.util.Comparator.comparingInt(t -> Roles.need(byId, t.appointment()).startMin()))
        .forEach(
            t -> {
              Stock s = byType.get(t.instrument().type());
              if (s == null) {
                return;
              }
              int before =
                  s.uses().get(t.instrument().index())
                      + uses.merge(t.instrument(), 1, Integer::sum)
                      - 1;
              double left = (double) (s.life() - before) / s.life();
              double asked = Roles.need(byId, t.appointment()).detail(s.type()).lifeAsked();
              if (asked > left) {
                worn.add(new Worn(t, asked, left));
              }
            });
    return worn;
  }
}
