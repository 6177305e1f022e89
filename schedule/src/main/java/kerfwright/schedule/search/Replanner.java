package kerfwright.schedule.search;

import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.DayProgress;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.TrayPlace;

/**
 * Plans the rest of a day again after something changed, touching as little as possible: fewest
 * shortages first, then fewest changed trays, then fewest added loads.
 *
 * <p>Types whose plan still holds are left alone, and so are the loads that hold other types'
 * instruments; loads may be added. So the answer comes at once, and its shortages are not proven to
 * be the fewest of the whole day: plan the day afresh for that.
 */
public final class Replanner {
  /** Weights of the strict order: instruments in loads, loads, changed trays, shortages. */
  private static final long LOAD = 5_000;

  private static final long CHANGE = 40 * LOAD;

  private final DayView view;
  private final Timetable kept;

  private Replanner(DayView view, DayPlan before) {
    this.view = view;
    kept = Timetable.of(view, before);
  }

  /**
   * The new plan and what it changes.
   *
   * @param plan the plan from now on, what has happened included
   * @param changed trays on which an instrument of the plan before is another one or missing now
   * @param seconds time taken
   */
  public record Replan(DayPlan plan, List<String> changed, double seconds) {
    public Replan {
      changed = List.copyOf(changed);
    }
  }

  /** What a plan has made of the day by a minute: loads started, trays of appointments begun. */
  public static FixedFacts factsAt(Day day, DayPlan plan, int nowMin) {
    Set<String> begun =
        day.appointments().stream()
            .filter(a -> a.startMin() < nowMin)
            .map(Appointment::id)
            .collect(Collectors.toSet());
    List<TrayPlace> trays =
        plan.trays().stream().filter(t -> begun.contains(t.appointment())).toList();
    List<SteriliserLoad> loads = plan.loads().stream().filter(l -> l.startMin() < nowMin).toList();
    return new FixedFacts(nowMin, loads, trays);
  }

  /**
   * Plans again.
   *
   * @param changed the day as it is now, its facts included
   * @param before the plan followed so far
   */
  public static Replan replan(Day changed, DayPlan before, SearchLimits limits) {
    long started = System.nanoTime();
    DayView view = new DayView(changed);
    DayPlan plan = new Replanner(view, before).plan(new Search(limits, () -> false));
    return new Replan(plan, changes(before, plan), (System.nanoTime() - started) / 1e9);
  }

  private DayPlan plan(Search search) {
    Set<Integer> broken = new TreeSet<>();
    for (int k = 0; k < view.types.size(); k++) {
      if (!holds(k)) {
        broken.add(k);
      }
    }
    Timetable repaired = kept.copy(view);
    broken.forEach(repaired::unload);
    broken.forEach(k -> repair(k, repaired));
    repaired.trim(view);
    Timetable[] best = {repaired};
    String by = "repair";
    if (!broken.isEmpty() && NativeSolver.available()) {
      DayModel model = new DayModel(view, Levels::named, broken, kept);
      model.hint(repaired);
      search.run(model, cost(model, broken), List.of(), search.left(), t -> best[0] = t, b -> {});
      by = "CP-SAT repair";
    }
    return new Scoreboard(view, DayProgress.NONE, by, best[0]).plan();
  }

  /** Whether the plan of a type can still be followed. */
  private boolean holds(int k) {
    TypeRun run = new TypeRun(view, view.types.get(k));
    boolean[] holds = {true};
    run.type.inTime(
        d -> {
          int u = kept.unit[k][d];
          if (u != Timetable.SHORT) {
            holds[0] &= run.serves(u, d);
            run.use(u, d);
          }
        },
        q -> {
          for (Timetable.Inside i : kept.inside.get(q)) {
            if (i.type() == k) {
              holds[0] &= run.loads(i.unit(), q);
              run.load(i.unit(), q);
            }
          }
        });
    return holds[0];
  }

  /** Keeps what can be kept; a broken need takes a spare clean instrument or goes short. */
  private void repair(int k, Timetable t) {
    TypeRun run = new TypeRun(view, view.types.get(k));
    run.type.inTime(
        d -> {
          int wanted = kept.unit[k][d];
          boolean stays = wanted != Timetable.SHORT && run.serves(wanted, d);
          int u = stays ? wanted : spare(run, k, d);
          t.unit[k][d] = u;
          if (u != Timetable.SHORT) {
            run.use(u, d);
          }
        },
        q -> {
          int room = t.loads[q] * view.day.loadCapacity() - t.inside.get(q).size();
          for (int u = 0; u < run.type.units && room > 0; u++) {
            if (run.left[u] > 0 && run.loads(u, q)) {
              t.inside.get(q).add(new Timetable.Inside(k, u));
              run.load(u, q);
              room--;
            }
          }
        });
  }

  /** A clean instrument, the one the old plan asks for last. */
  private int spare(TypeRun run, int k, int d) {
    int best = Timetable.SHORT;
    int bestNext = -1;
    for (int u = 0; u < run.type.units; u++) {
      int next = d + 1;
      while (next < run.type.demands && kept.unit[k][next] != u) {
        next++;
      }
      if (run.serves(u, d) && next > bestNext) {
        best = u;
        bestNext = next;
      }
    }
    return best;
  }

  /** The cost of a repair; each instrument is held to its life beside. */
  private LinearExprBuilder cost(DayModel model, Set<Integer> broken) {
    LinearExprBuilder cost = LinearExpr.newBuilder().add(model.contents());
    cost.addTerm(model.loads(), LOAD);
    int demands = broken.stream().mapToInt(k -> view.types.get(k).demands).sum();
    cost.addTerm(model.shortages(), CHANGE * (demands + 1));
    List<Integer> types = List.copyOf(broken);
    for (int i = 0; i < types.size(); i++) {
      TypeFlow flow = model.flows.get(i);
      for (int u = 0; u < flow.type.units; u++) {
        LinearExprBuilder uses = LinearExpr.newBuilder();
        for (int d = 0; d < flow.type.demands; d++) {
          int was = kept.unit[types.get(i)][d];
          if (flow.x[d][u + 1] != null) {
            uses.add(flow.x[d][u + 1]);
            cost.addTerm(flow.x[d][u + 1], was != Timetable.SHORT && was != u ? CHANGE : 0);
          }
        }
        model.model.addLessOrEqual(uses, flow.type.left[u]);
      }
    }
    return cost;
  }

  private static List<String> changes(DayPlan before, DayPlan now) {
    Set<TrayPlace> kept = new HashSet<>(now.trays());
    return new ArrayList<>(
        before.trays().stream()
            .filter(t -> !kept.contains(t))
            .map(TrayPlace::appointment)
            .distinct()
            .toList());
  }
}
