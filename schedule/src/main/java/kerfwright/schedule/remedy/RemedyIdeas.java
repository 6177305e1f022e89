package kerfwright.schedule.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.Need;
import kerfwright.schedule.Shortage;
import kerfwright.schedule.Stock;
import kerfwright.schedule.Substitute;
import kerfwright.schedule.search.DayPlanner;

/**
 * Remedies worth planning for, given what is short. Swaps are many; of them only the most promising
 * are kept, judged by one quick run of the changed day with the loads of the plan.
 */
final class RemedyIdeas {
  private static final int MOST_SUBSTITUTES = 4;
  private static final int MOST_SWAPS = 4;
  private static final int MOST_LOADS = 4;
  private static final int MOST_PIECES = 3;

  /** So many pairs are looked at for swaps, times the needs of the day. */
  private static final int PAIRS_TIMES_DEMAND = 30_000;

  private final Day day;
  private final DayPlan plan;
  private final Set<String> types = new TreeSet<>();

  RemedyIdeas(Day day, DayPlan plan) {
    this.day = day;
    this.plan = plan;
    plan.shortages().forEach(s -> types.add(s.type()));
  }

  /** Ideas, the cheapest first. */
  List<Remedy> all() {
    List<Remedy> ideas = new ArrayList<>();
    substitutes(ideas);
    ideas.addAll(swaps());
    loads(ideas);
    for (String type : types) {
      int missing = (int) plan.shortages().stream().filter(s -> s.type().equals(type)).count();
      for (int pieces = 1; pieces <= Math.min(missing, MOST_PIECES); pieces++) {
        ideas.add(new Remedy.BuyMore(type, pieces));
      }
    }
    ideas.sort(Comparator.comparingDouble(Remedy::costMin));
    return ideas;
  }

  /** Any tray that needs a short type may take a substitute: the short ones first. */
  private void substitutes(List<Remedy> ideas) {
    Set<String> shortOnes = new TreeSet<>();
    plan.shortages().forEach(s -> shortOnes.add(s.appointment() + "\n" + s.type()));
    List<Remedy.UseSubstitute> found = new ArrayList<>();
    for (Appointment a : day.appointments()) {
      for (Need need : a.details()) {
        if (types.contains(need.type())) {
          for (Substitute other : need.substitutes()) {
            found.add(
                new Remedy.UseSubstitute(a.id(), need.type(), other.type(), other.costRatio()));
          }
        }
      }
    }
    found.sort(
        Comparator.comparing(
                (Remedy.UseSubstitute r) -> !shortOnes.contains(r.appointment() + "\n" + r.type()))
            .thenComparingDouble(Remedy.UseSubstitute::costRatio));
    found.stream().limit(MOST_SUBSTITUTES + plan.shortages().size()).forEach(ideas::add);
  }

  private record Swap(Remedy.SwapAppointments remedy, int quick) {}

  private List<Remedy> swaps() {
    int today = Math.max(plan.shortages().size(), quick(day));
    return pairs().stream()
        .flatMap(swap -> swap.applied(day).map(changed -> new Swap(swap, quick(changed))).stream())
        .filter(swap -> swap.quick() < today)
        .sorted(Comparator.comparingInt(Swap::quick))
        .limit(MOST_SWAPS)
        .<Remedy>map(Swap::remedy)
        .toList();
  }

  private record Pair(Appointment first, Appointment second, boolean ofAShortOne) {
    int apartMin() {
      return second.startMin() - first.startMin();
    }
  }

  /** Pairs that touch a short type: those of a short tray first, then the ones close in time. */
  private List<Remedy.SwapAppointments> pairs() {
    Set<String> shortOnes = new TreeSet<>();
    plan.shortages().forEach(s -> shortOnes.add(s.appointment()));
    List<Appointment> inOrder = day.inOrder();
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < inOrder.size(); i++) {
      for (int j = i + 1; j < inOrder.size(); j++) {
        Appointment a = inOrder.get(i);
        Appointment b = inOrder.get(j);
        if (a.startMin() < b.startMin() && (needsShort(a) || needsShort(b))) {
          boolean ofAShortOne = shortOnes.contains(a.id()) || shortOnes.contains(b.id());
          pairs.add(new Pair(a, b, ofAShortOne));
        }
      }
    }
    pairs.sort(Comparator.comparing((Pair p) -> !p.ofAShortOne()).thenComparingInt(Pair::apartMin));
    return pairs.stream()
        .limit(PAIRS_TIMES_DEMAND / (1 + day.demand()))
        .map(p -> new Remedy.SwapAppointments(p.first().id(), p.second().id()))
        .toList();
  }

  private boolean needsShort(Appointment a) {
    return a.needs().stream().anyMatch(types::contains);
  }

  /** Shortages of the greedy plan. */
  private static int quick(Day changed) {
    return DayPlanner.quickShortages(changed).size();
  }

  private void loads(List<Remedy> ideas) {
    List<InstrumentRef> dirty = new ArrayList<>();
    for (Stock s : day.stock()) {
      for (int u : new TreeSet<>(s.dirty())) {
        InstrumentRef ref = new InstrumentRef(s.type(), u);
        boolean loaded =
            day.facts().loads().stream().anyMatch(load -> load.instruments().contains(ref));
        if (types.contains(s.type()) && s.uses().get(u) < s.life() && !loaded) {
          dirty.add(ref);
        }
      }
    }
    ideas.add(
        new Remedy.LoadBeforeOpening(dirty.subList(0, Math.min(dirty.size(), day.loadCapacity()))));
    starts().stream().limit(MOST_LOADS).forEach(t -> ideas.add(new Remedy.LoadBetween(t)));
    ideas.add(new Remedy.LoadBeside());
  }

  /** Minutes at which a load would just be ready for what is short. */
  private Set<Integer> starts() {
    Set<Integer> starts = new LinkedHashSet<>();
    for (Shortage s : plan.shortages()) {
      day.appointment(s.appointment())
          .map(a -> a.startMin() - day.loadMin())
          .filter(t -> !day.mayStartAt(t) && t >= Math.max(0, day.facts().nowMin()))
          .filter(t -> t <= day.lengthMin() - day.loadMin())
          .ifPresent(starts::add);
    }
    return starts;
  }
}
