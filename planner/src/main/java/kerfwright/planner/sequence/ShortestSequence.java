package kerfwright.planner.sequence;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import kerfwright.planner.choice.Candidate;

/**
 * The cheapest way through all stretches: shortest path where a node is a candidate for a stretch
 * and an edge a change of instrument. Linear in the number of candidates, because a change costs
 * one of three amounts.
 */
public final class ShortestSequence {
  private ShortestSequence() {}

  /**
   * The cheapest choice for each stretch.
   *
   * @param stretches candidates for each stretch, none empty
   * @param besides what a choice costs besides its own cost, seconds
   * @param afterwards what still has to be paid after the last one, seconds (finishing)
   */
  public static List<Candidate> of(
      List<Found> stretches,
      ToDoubleFunction<Candidate> besides,
      ToDoubleFunction<Candidate> afterwards) {
    List<int[]> cameFrom = new ArrayList<>();
    double[] before = {};
    List<Candidate> candidatesBefore = List.of();
    for (Found stretch : stretches) {
      List<Candidate> candidates = stretch.candidates();
      double[] now = new double[candidates.size()];
      int[] from = new int[candidates.size()];
      Best best = new Best(candidatesBefore, before);
      for (int i = 0; i < now.length; i++) {
        Candidate c = candidates.get(i);
        Way way = best.into(c);
        now[i] = c.costS() + besides.applyAsDouble(c) + way.cost();
        from[i] = way.from();
      }
      cameFrom.add(from);
      before = now;
      candidatesBefore = candidates;
    }
    int last = cheapest(candidatesBefore, before, afterwards);
    List<Candidate> path = new ArrayList<>();
    for (int i = stretches.size() - 1; i >= 0; i--) {
      path.add(stretches.get(i).candidates().get(last));
      last = cameFrom.get(i)[last];
    }
    Collections.reverse(path);
    return path;
  }

  private static int cheapest(
      List<Candidate> candidates, double[] costs, ToDoubleFunction<Candidate> afterwards) {
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < costs.length; i++) {
      double cost = costs[i] + afterwards.applyAsDouble(candidates.get(i));
      if (best < 0 || cost < least || cost == least && earlier(candidates, i, best)) {
        best = i;
        least = cost;
      }
    }
    return best;
  }

  /** Of two equal ones the first by id, then by handpiece, counts. */
  private static boolean earlier(List<Candidate> candidates, int a, int b) {
    int ids = candidates.get(a).id().compareTo(candidates.get(b).id());
    return ids != 0
        ? ids < 0
        : candidates.get(a).handpiece().id().compareTo(candidates.get(b).handpiece().id()) < 0;
  }

  private record Way(int from, String key, double cost) {
    Way after(double changeS) {
      return new Way(from, key, cost + changeS);
    }
  }

  /** Cheapest ways to arrive, kept overall, by handpiece and by instrument. */
  private static final class Best {
    private static final int NOWHERE = -1;

    private final Map<String, Way> byHandpiece = new HashMap<>();
    private final Map<String, Way> byInstrument = new HashMap<>();
    private Way overall = new Way(NOWHERE, "", Double.POSITIVE_INFINITY);
    private final boolean first;

    Best(List<Candidate> candidates, double[] costs) {
      first = candidates.isEmpty();
      for (int i = 0; i < costs.length; i++) {
        Candidate c = candidates.get(i);
        Way way = new Way(i, key(c), costs[i]);
        overall = cheaper(overall, way);
        byHandpiece.merge(c.handpiece().id(), way, Best::cheaper);
        byInstrument.merge(way.key(), way, Best::cheaper);
      }
    }

    Way into(Candidate c) {
      if (first) {
        return new Way(NOWHERE, "", 0);
      }
      Way best = overall.after(Prices.HANDPIECE_S);
      Way handpiece = byHandpiece.get(c.handpiece().id());
      if (handpiece != null) {
        best = cheaper(best, handpiece.after(Prices.CHANGE_S));
      }
      Way same = byInstrument.get(key(c));
      return same == null ? best : cheaper(best, same);
    }

    private static String key(Candidate c) {
      return c.handpiece().id() + '/' + c.id();
    }

    private static Way cheaper(Way a, Way b) {
      if (a.from() == NOWHERE || b.from() == NOWHERE || a.cost() != b.cost()) {
        return b.cost() < a.cost() ? b : a;
      }
      return b.key().compareTo(a.key()) < 0 ? b : a;
    }
  }
}
