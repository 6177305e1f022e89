package kerfwright.practice.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What each instrument of a plan does through the day, and the changes of roles two may make. */
final class Roles {
  private static final double BETTER = 1e-9;

  /** One thing an instrument goes through: a use, or a load. */
  private record Event(
      int atMin, int endMin, boolean fixed, @Nullable String appointment, double asked) {}

  private final DayProblem day;
  private final DayPlan plan;
  private final Map<String, Appointment> byId = new HashMap<>();
  private final Map<InstrumentRef, List<Event>> doings = new HashMap<>();

  Roles(DayProblem day, DayPlan plan) {
    this.day = day;
    this.plan = plan;
    day.appointments().forEach(a -> byId.put(a.id(), a));
    for (TrayPlace t : plan.trays()) {
      Appointment a = need(byId, t.appointment());
      double asked = a.detail(t.instrument().type()).lifeAsked();
      of(t.instrument())
          .add(new Event(a.startMin(), a.endMin(), day.facts().trays().contains(t), a.id(), asked));
    }
    for (SteriliserLoad load : plan.loads()) {
      boolean fixed = day.facts().loads().contains(load);
      for (InstrumentRef ref : load.instruments()) {
        of(ref).add(new Event(load.startMin(), load.startMin() + day.loadMin(), fixed, null, 0));
      }
    }
    doings.values().forEach(d -> d.sort(Comparator.comparingInt(Event::atMin)));
  }

  static Appointment need(Map<String, Appointment> byId, String id) {
    Appointment a = byId.get(id);
    if (a == null) {
      throw new IllegalArgumentException("no appointment " + id);
    }
    return a;
  }

  private List<Event> of(InstrumentRef ref) {
    return doings.computeIfAbsent(ref, r -> new ArrayList<>());
  }

  /** Changes roles among the instruments of one type until no change of a pair helps. */
  void improve(Stock stock) {
    boolean again = true;
    while (again) {
      again = false;
      for (int u = 0; u < stock.uses().size(); u++) {
        for (int v = u + 1; v < stock.uses().size(); v++) {
          again |= improve(stock, u, v);
        }
      }
    }
  }

  private boolean improve(Stock stock, int u, int v) {
    List<Event> a = of(new InstrumentRef(stock.type(), u));
    List<Event> b = of(new InstrumentRef(stock.type(), v));
    int uneven = uneven(stock);
    for (int i = 0; i <= a.size(); i++) {
      for (int j = 0; j <= b.size(); j++) {
        if (!mayMeet(stock, u, a, i, v, b, j)) {
          continue;
        }
        double worse = misfit(stock, u, a) + misfit(stock, v, b);
        double fit = fit(stock, u, a) + fit(stock, v, b);
        exchange(a, i, b, j);
        double worseThen = misfit(stock, u, a) + misfit(stock, v, b);
        double fitThen = fit(stock, u, a) + fit(stock, v, b);
        boolean better =
            worseThen < worse - BETTER || worseThen < worse + BETTER && fitThen > fit + BETTER;
        if (better
            && withinLife(stock, u, a)
            && withinLife(stock, v, b)
            && uneven(stock) <= uneven) {
          return true;
        }
        exchange(a, i, b, j);
      }
    }
    return false;
  }

  private static void exchange(List<Event> a, int i, List<Event> b, int j) {
    List<Event> tailA = new ArrayList<>(a.subList(i, a.size()));
    List<Event> tailB = new ArrayList<>(b.subList(j, b.size()));
    a.subList(i, a.size()).clear();
    b.subList(j, b.size()).clear();
    a.addAll(tailB);
    b.addAll(tailA);
  }

  /** Whether both lie clean at one minute between the events before and the events from here on. */
  private boolean mayMeet(Stock stock, int u, List<Event> a, int i, int v, List<Event> b, int j) {
    int from = Math.max(cleanFrom(stock, u, a, i), cleanFrom(stock, v, b, j));
    int until =
        Math.min(
            i < a.size() ? a.get(i).atMin() : Integer.MAX_VALUE,
            j < b.size() ? b.get(j).atMin() : Integer.MAX_VALUE);
    return from <= until
        && until != Integer.MAX_VALUE
        && a.subList(i, a.size()).stream().noneMatch(Event::fixed)
        && b.subList(j, b.size()).stream().noneMatch(Event::fixed);
  }

  private static int cleanFrom(Stock stock, int u, List<Event> doing, int i) {
    if (i == 0) {
      return stock.dirty().contains(u) ? Integer.MAX_VALUE : Integer.MIN_VALUE;
    }
    Event last = doing.get(i - 1);
    return last.appointment() == null ? last.endMin() : Integer.MAX_VALUE;
  }

  /** How far needs ask beyond what is left. */
  private static double misfit(Stock stock, int u, List<Event> doing) {
    double sum = 0;
    int before = stock.uses().get(u);
    for (Event e : doing) {
      if (e.appointment() != null) {
        sum += Math.max(0, e.asked() - (double) (stock.life() - before++) / stock.life());
      }
    }
    return sum;
  }

  private static double fit(Stock stock, int u, List<Event> doing) {
    double sum = 0;
    int before = stock.uses().get(u);
    for (Event e : doing) {
      if (e.appointment() != null) {
        sum += e.asked() * (stock.life() - before++) / stock.life();
      }
    }
    return sum;
  }

  private static int total(Stock stock, int u, List<Event> doing) {
    return stock.uses().get(u) + (int) doing.stream().filter(e -> e.appointment() != null).count();
  }

  private static boolean withinLife(Stock stock, int u, List<Event> doing) {
    return total(stock, u, doing) <= stock.life();
  }

  private int uneven(Stock stock) {
    int most = Integer.MIN_VALUE;
    int least = Integer.MAX_VALUE;
    for (int u = 0; u < stock.uses().size(); u++) {
      int total = total(stock, u, of(new InstrumentRef(stock.type(), u)));
      most = Math.max(most, total);
      least = Math.min(least, total);
    }
    return most - least;
  }

  /** The plan with the roles as they are now. */
  DayPlan plan() {
    List<TrayPlace> trays = new ArrayList<>();
    Map<Integer, List<InstrumentRef>> moved = new HashMap<>();
    doings.forEach(
        (ref, doing) -> {
          for (Event e : doing) {
            if (e.appointment() != null) {
              trays.add(new TrayPlace(e.appointment(), ref));
            } else if (!e.fixed()) {
              moved.computeIfAbsent(e.atMin(), t -> new ArrayList<>()).add(ref);
            }
          }
        });
    trays.sort(new DayOrder(day).trays());
    moved.values().forEach(refs -> refs.sort(Comparator.naturalOrder()));
    List<SteriliserLoad> loads = new ArrayList<>();
    for (SteriliserLoad load : plan.loads()) {
      if (day.facts().loads().contains(load)) {
        loads.add(load);
        continue;
      }
      // loads of one minute share what goes in; each keeps its number
      List<InstrumentRef> waiting = moved.getOrDefault(load.startMin(), new ArrayList<>());
      List<InstrumentRef> mine = waiting.subList(0, load.instruments().size());
      loads.add(new SteriliserLoad(load.startMin(), mine));
      mine.clear();
    }
    return judged(new DayPlan(trays, loads, plan.shortages(), goals(), plan.solver()));
  }

  private List<GoalResult> goals() {
    int uneven = day.stock().stream().mapToInt(s -> s.uses().isEmpty() ? 0 : uneven(s)).sum();
    return plan.goals().stream()
        .map(
            g ->
                g.goal() != Goal.WEAR
                    ? g
                    : new GoalResult(
                        g.goal(), uneven, Math.min(uneven, g.bound()), g.proven(), g.seconds()))
        .toList();
  }

  private DayPlan judged(DayPlan changed) {
    DayReferee.Verdict verdict = DayReferee.judge(day, changed);
    if (!verdict.valid()) {
      throw new IllegalStateException("Changed roles break rules: " + verdict.errors());
    }
    return changed;
  }
}
