package kerfwright.app.day;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.format.DateTimeFormatter;
import java.util.List;
import kerfwright.app.json.JsonText;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.Goal;
import kerfwright.schedule.GoalResult;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.Shortage;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.TrayPlace;
import kerfwright.schedule.remedy.Remedy;
import kerfwright.schedule.remedy.RemedyResult;
import kerfwright.schedule.search.FreshTrays;

/** Writes a day plan as {@code day/1}. */
public final class DayJson {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

  private DayJson() {}

  public static String text(Day problem, DayPlan plan, List<RemedyResult> remedies) {
    ObjectNode json = node(problem, plan);
    json.set("remedies", remedies(problem, plan, remedies));
    return JsonText.of(json);
  }

  private static ArrayNode remedies(Day problem, DayPlan plan, List<RemedyResult> remedies) {
    ArrayNode all = JsonNodeFactory.instance.arrayNode();
    for (RemedyResult r : remedies) {
      ObjectNode node = all.addObject();
      put(node, problem, r);
      node.set("costMin", JsonText.number(r.costMin()));
      node.put("shortagesBefore", plan.value(Goal.SHORTAGES));
      node.put("shortagesAfter", r.shortagesAfter()).put("loadsAfter", r.loadsAfter());
      node.put("proven", r.plan().result(Goal.SHORTAGES).proven());
    }
    return all;
  }

  /** Kind and details of a remedy. */
  private static void put(ObjectNode node, Day day, RemedyResult result) {
    Remedy remedy = result.remedy();
    if (remedy instanceof Remedy.UseSubstitute r) {
      node.put("kind", "substitute").put("appointment", r.appointment());
      node.put("type", r.type()).put("instead", r.instead()).put("costRatio", r.costRatio());
    } else if (remedy instanceof Remedy.SwapAppointments r) {
      node.put("kind", "swap");
      ArrayNode moved = node.putArray("appointments");
      for (String id : List.of(r.first(), r.second())) {
        int start = result.day().appointment(id).orElseThrow().startMin();
        moved.addObject().put("id", id).put("start", clock(day, start));
      }
    } else if (remedy instanceof Remedy.LoadBetween r) {
      node.put("kind", "load").put("start", clock(day, r.startMin()));
    } else if (remedy instanceof Remedy.LoadBeforeOpening r) {
      node.put("kind", "load").put("start", clock(day, -day.loadMin()));
      ArrayNode inside = node.putArray("instruments");
      r.inside().forEach(ref -> put(inside.addObject(), ref));
    } else if (remedy instanceof Remedy.LoadBeside) {
      node.put("kind", "steriliser").put("sterilisers", day.sterilisers() + 1);
    } else if (remedy instanceof Remedy.BuyMore r) {
      node.put("kind", "buy").put("type", r.type()).put("pieces", r.pieces());
    }
  }

  private static String clock(Day day, int minute) {
    return CLOCK.format(day.clock(minute));
  }

  /** The plan as a tree; indexes count from 0 as in the day file. */
  public static ObjectNode node(Day problem, DayPlan plan) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("contract", "day/1");
    ArrayNode assignments = json.putArray("assignments");
    for (TrayPlace tray : plan.trays()) {
      ObjectNode node = assignments.addObject().put("appointment", tray.appointment());
      put(node, tray.instrument());
    }
    ArrayNode loads = json.putArray("loads");
    for (SteriliserLoad load : plan.loads()) {
      ObjectNode node = loads.addObject();
      node.put("start", clock(problem, load.startMin()));
      ArrayNode inside = node.putArray("instruments");
      load.instruments().forEach(ref -> put(inside.addObject(), ref));
    }
    ArrayNode shortages = json.putArray("shortages");
    for (Shortage s : plan.shortages()) {
      shortages.addObject().put("appointment", s.appointment()).put("type", s.type());
    }
    ArrayNode phases = json.putArray("phases");
    for (GoalResult g : plan.goals()) {
      ObjectNode node = phases.addObject().put("goal", g.goal().label());
      node.put("value", g.value()).put("bound", g.bound()).put("proven", g.proven());
      node.set("seconds", JsonText.number(g.seconds()));
    }
    ArrayNode worn = json.putArray("worn");
    for (FreshTrays.Worn w : FreshTrays.worn(problem, plan)) {
      ObjectNode node = worn.addObject().put("appointment", w.place().appointment());
      put(node, w.place().instrument());
      node.set("lifeAsked", JsonText.number(w.asked()));
      node.set("lifeLeft", JsonText.number(w.left()));
    }
    json.put("solver", plan.solver());
    return json;
  }

  private static void put(ObjectNode node, InstrumentRef ref) {
    node.put("type", ref.type()).put("index", ref.index());
  }
}
