package kerfwright.practice.day;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A day with names replaced by numbers and fixed facts worked in: what is left to decide.
 *
 * <p>A load may start at {@code slotMin[q]}, and at most {@code slotFree[q]} loads that are not
 * fixed may run at that minute.
 */
final class DayView {
  final DayProblem problem;
  final List<TypeView> types = new ArrayList<>();
  final int[] slotMin;
  final int[] slotFree;
  final int fixedLoads;

  DayView(DayProblem problem) {
    this.problem = problem;
    FixedFacts facts = problem.facts();
    TreeSet<Integer> starts = new TreeSet<>(problem.extraStartsMin());
    for (int t = 0; t <= problem.lengthMin(); t += problem.loadGridMin()) {
      starts.add(t);
    }
    slotMin = starts.stream().filter(problem::mayStartAt).mapToInt(t -> t).toArray();
    slotFree = new int[slotMin.length];
    for (int q = 0; q < slotMin.length; q++) {
      slotFree[q] = problem.sterilisers() - running(facts, slotMin[q]);
    }
    fixedLoads = facts.loads().size();
    for (Stock s : problem.stock()) {
      types.add(new TypeView(problem, s, slotMin));
    }
  }

  private int running(FixedFacts facts, int minute) {
    int n = 0;
    for (SteriliserLoad load : facts.loads()) {
      if (load.startMin() <= minute && minute < load.startMin() + problem.loadMin()) {
        n++;
      }
    }
    return n;
  }

  int slots() {
    return slotMin.length;
  }

  int endOf(int slot) {
    return slotMin[slot] + problem.loadMin();
  }

  /** First slot whose load would still run while one started at this slot starts. */
  int firstOverlapping(int slot) {
    int p = slot;
    while (p > 0 && slotMin[p - 1] + problem.loadMin() > slotMin[slot]) {
      p--;
    }
    return p;
  }

  /** Whether the sterilisers can run loads with these starts. */
  boolean fits(int[] starts) {
    for (int q = 0; q < starts.length; q++) {
      int running = 0;
      for (int p = firstOverlapping(q); p <= q; p++) {
        running += starts[p];
      }
      if (running > slotFree[q]) {
        return false;
      }
    }
    return true;
  }
}
