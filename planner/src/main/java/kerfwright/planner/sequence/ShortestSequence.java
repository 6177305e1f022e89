package kerfwright.planner.sequence;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.BiPredicate;
import kerfwright.planner.choice.Candidate;

/**
 * The cheapest way through all operations: shortest path where a node is a candidate for an
 * operation and an edge a change of instrument that the rules on the order allow.
 */
public final class ShortestSequence {
  private static final int NOWHERE = -1;

  private ShortestSequence() {}

  /**
   * The cheapest choice for each operation.
   *
   * @param found candidates for each operation, none empty
   * @param allows whether a choice may follow another
   * @return the choices; shorter than what was found where no choice may follow the last one
   */
  public static List<Candidate> of(List<Found> found, BiPredicate<Candidate, Candidate> allows) {
    List<int[]> cameFrom = new ArrayList<>();
    List<Candidate> before = List.of();
    double[] costs = {};
    for (Found operation : found) {
      List<Candidate> candidates = operation.candidates();
      double[] now = new double[candidates.size()];
      int[] from = new int[candidates.size()];
      boolean any = false;
      for (int i = 0; i < now.length; i++) {
        Candidate c = candidates.get(i);
        from[i] = cheapestInto(c, before, costs, allows);
        now[i] = costOf(c, from[i], before, costs);
        any |= now[i] < Double.POSITIVE_INFINITY;
      }
      if (!any) {
        break;
      }
      cameFrom.add(from);
      before = candidates;
      costs = now;
    }
    return back(found, cameFrom, before, costs);
  }

  private static int cheapestInto(
      Candidate c,
      List<Candidate> before,
      double[] costs,
      BiPredicate<Candidate, Candidate> allows) {
    int best = NOWHERE;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < costs.length; i++) {
      // the dear ones cannot win, whatever the change costs
      if (costs[i] > least) {
        continue;
      }
      double cost = costs[i] + Change.seconds(before.get(i), c);
      boolean better = cost < least || cost == least && earlier(before, i, best);
      if (better && allows.test(before.get(i), c)) {
        best = i;
        least = cost;
      }
    }
    return best;
  }

  private static double costOf(Candidate c, int from, List<Candidate> before, double[] costs) {
    if (before.isEmpty()) {
      return c.costS();
    }
    return from == NOWHERE
        ? Double.POSITIVE_INFINITY
        : c.costS() + costs[from] + Change.seconds(before.get(from), c);
  }

  private static List<Candidate> back(
      List<Found> found, List<int[]> cameFrom, List<Candidate> lastOnes, double[] costs) {
    int last = NOWHERE;
    for (int i = 0; i < costs.length; i++) {
      if (last == NOWHERE
          || costs[i] < costs[last]
          || costs[i] == costs[last] && earlier(lastOnes, i, last)) {
        last = i;
      }
    }
    List<Candidate> path = new ArrayList<>();
    for (int i = cameFrom.size() - 1; i >= 0; i--) {
      path.add(found.get(i).candidates().get(last));
      last = cameFrom.get(i)[last];
    }
    Collections.reverse(path);
    return path;
  }

  /** Of two equal ones the first by id, then by handpiece, counts. */
  private static boolean earlier(List<Candidate> candidates, int a, int b) {
    if (b == NOWHERE) {
      return true;
    }
    int ids = candidates.get(a).id().compareTo(candidates.get(b).id());
    return ids != 0
        ? ids < 0
        : candidates.get(a).handpiece().id().compareTo(candidates.get(b).handpiece().id()) < 0;
  }
}
