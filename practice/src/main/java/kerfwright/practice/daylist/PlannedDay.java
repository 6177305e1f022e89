package kerfwright.practice.daylist;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.InstrumentRef;

/**
 * The plan of a day with the stock it was made for: the pieces of the drawer as they were when the
 * day was first planned. What happened since stands among the facts of the problem.
 *
 * @param problem the day as planned
 * @param pieces labels of the pieces of each type, in the order of their indexes
 * @param plan the plan
 * @param remedies what would help against its shortages
 */
public record PlannedDay(
    Day problem, Map<String, List<String>> pieces, DayPlan plan, List<KeptRemedy> remedies) {
  public PlannedDay {
    pieces = Map.copyOf(pieces);
    remedies = List.copyOf(remedies);
  }

  /**
   * The label of a piece; one not in the drawer, as a remedy may foresee, has a mark of its own.
   */
  public String label(InstrumentRef ref) {
    List<String> known = pieces.getOrDefault(ref.type(), List.of());
    return ref.index() < known.size() ? known.get(ref.index()) : "+" + (ref.index() + 1);
  }

  /** The label of the item in the drawer: one piece of a lot is called by the lot and a number. */
  public static String itemLabel(String label) {
    int number = label.indexOf(" (");
    return number < 0 ? label : label.substring(0, number);
  }

  /** The same day with a piece under another label. */
  PlannedDay called(InstrumentRef ref, String label) {
    Map<String, List<String>> others = new HashMap<>(pieces);
    List<String> labels = new ArrayList<>(others.getOrDefault(ref.type(), List.of()));
    labels.set(ref.index(), label);
    others.put(ref.type(), labels);
    return new PlannedDay(problem, others, plan, remedies);
  }

  public PlannedDay with(Day other, DayPlan otherPlan, List<KeptRemedy> otherRemedies) {
    return new PlannedDay(other, pieces, otherPlan, otherRemedies);
  }
}
