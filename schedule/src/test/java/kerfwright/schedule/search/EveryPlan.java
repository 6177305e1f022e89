package kerfwright.schedule.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.Stock;

/**
 * Brute force: tries every way to start loads and every way to fill every need, fixed facts held,
 * and keeps the best in (shortages, loads, wear). Shares no code with the planner.
 */
public final class EveryPlan {
  /** One need; {@code fixed} is the instrument a fact has laid for it, or -1. */
  private record Need(int type, int start, int end, int fixed) {}

  private record Wash(int from, int until) {}

  private final Day problem;
  private final List<Need> needs = new ArrayList<>();
  private final int[] slots;
  private int[] best = {Integer.MAX_VALUE, 0, 0};

  private EveryPlan(Day problem) {
    this.problem = problem;
    for (Appointment a : problem.appointments()) {
      for (int k = 0; k < problem.stock().size(); k++) {
        if (a.needs().contains(problem.stock().get(k).type())) {
          needs.add(new Need(k, a.startMin(), a.endMin(), fixed(a, problem.stock().get(k))));
        }
      }
    }
    needs.sort(Comparator.comparingInt(Need::start));
    TreeSet<Integer> s = new TreeSet<>(problem.extraStartsMin());
    for (int t = 0; t + problem.loadMin() <= problem.lengthMin(); t += problem.loadGridMin()) {
      s.add(t);
    }
    s.removeIf(t -> t < problem.facts().nowMin());
    slots = s.stream().mapToInt(i -> i).toArray();
  }

  /** Shortages, loads, wear of the best plan there is. */
  public static int[] best(Day problem) {
    EveryPlan all = new EveryPlan(problem);
    all.fill(0, new int[all.needs.size()]);
    return all.best;
  }

  private int fixed(Appointment a, Stock s) {
    return problem.facts().trays().stream()
        .filter(t -> t.appointment().equals(a.id()) && t.instrument().type().equals(s.type()))
        .mapToInt(t -> t.instrument().index())
        .findFirst()
        .orElse(-1);
  }

  private void fill(int n, int[] unit) {
    if (n == needs.size()) {
      judge(unit);
      return;
    }
    Stock s = problem.stock().get(needs.get(n).type());
    for (int u = -1; u < s.uses().size(); u++) {
      if (needs.get(n).fixed() >= 0 && needs.get(n).fixed() != u) {
        continue;
      }
      unit[n] = u;
      fill(n + 1, unit);
    }
  }

  private void judge(int[] unit) {
    int shortages = (int) Arrays.stream(unit).filter(u -> u < 0).count();
    if (shortages > best[0]) {
      return;
    }
    int wear = 0;
    List<Wash> washes = new ArrayList<>();
    for (int k = 0; k < problem.stock().size(); k++) {
      Stock s = problem.stock().get(k);
      int most = 0;
      int least = Integer.MAX_VALUE;
      for (int u = 0; u < s.uses().size(); u++) {
        int total = s.uses().get(u);
        int dirtyFrom = s.dirty().contains(u) ? -problem.loadMin() : -1;
        for (int n = 0; n < unit.length; n++) {
          if (unit[n] != u || needs.get(n).type() != k) {
            continue;
          }
          total++;
          List<Integer> done = fixedLoads(s, u);
          int from = dirtyFrom;
          int until = needs.get(n).start() - problem.loadMin();
          int end = needs.get(n).end();
          if (done.stream().anyMatch(t -> t > until && t < end)) {
            return;
          }
          if (dirtyFrom != -1 && done.stream().noneMatch(t -> t >= from && t <= until)) {
            washes.add(new Wash(dirtyFrom, until));
          }
          dirtyFrom = needs.get(n).end() + problem.cleaningMin();
        }
        if (total > s.life()) {
          return;
        }
        most = Math.max(most, total);
        least = Math.min(least, total);
      }
      wear += s.uses().isEmpty() ? 0 : most - least;
    }
    int known = best[1] - problem.facts().loads().size();
    int limit = shortages < best[0] ? Integer.MAX_VALUE : wear < best[2] ? known : known - 1;
    int loads = fewestLoads(0, new int[slots.length], washes, Math.min(limit, washes.size()));
    if (loads >= 0) {
      best = new int[] {shortages, loads + problem.facts().loads().size(), wear};
    }
  }

  private List<Integer> fixedLoads(Stock s, int u) {
    return problem.facts().loads().stream()
        .filter(l -> l.instruments().contains(new InstrumentRef(s.type(), u)))
        .map(SteriliserLoad::startMin)
        .toList();
  }

  /** Fewest loads, at most {@code limit}, that can take all washes; -1 if none can. */
  private int fewestLoads(int q, int[] starts, List<Wash> washes, int limit) {
    int used = Arrays.stream(starts).sum();
    if (used > limit) {
      return -1;
    }
    if (q == slots.length) {
      int[] room = Arrays.stream(starts).map(n -> n * problem.loadCapacity()).toArray();
      return place(0, washes, room) ? used : -1;
    }
    int fewest = -1;
    for (int n = 0; n <= problem.sterilisers(); n++) {
      starts[q] = n;
      int running = problem.running(problem.facts().loads(), slots[q]);
      for (int p = 0; p <= q; p++) {
        running += slots[p] + problem.loadMin() > slots[q] ? starts[p] : 0;
      }
      if (running <= problem.sterilisers()) {
        int found = fewestLoads(q + 1, starts, washes, fewest < 0 ? limit : fewest - 1);
        fewest = found >= 0 ? found : fewest;
      }
    }
    starts[q] = 0;
    return fewest;
  }

  private boolean place(int w, List<Wash> washes, int[] room) {
    if (w == washes.size()) {
      return true;
    }
    for (int q = 0; q < slots.length; q++) {
      if (room[q] > 0 && slots[q] >= washes.get(w).from() && slots[q] <= washes.get(w).until()) {
        room[q]--;
        if (place(w + 1, washes, room)) {
          room[q]++;
          return true;
        }
        room[q]++;
      }
    }
    return false;
  }
}
