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
    List<Map<Candidate, Candidate>> cameFrom = new ArrayList<>();
    Map<Candidate, Double> before = Map.of();
    for (Found stretch : stretches) {
      Map<Candidate, Double> now = new HashMap<>();
      Map<Candidate, Candidate> from = new HashMap<>();
      Best best = new Best(before);
      for (Candidate c : stretch.candidates()) {
        Way way = best.into(c);
        now.put(c, c.costS() + besides.applyAsDouble(c) + way.cost());
        if (way.from() != null) {
          from.put(c, way.from());
        }
      }
      cameFrom.add(from);
      before = now;
    }
    Candidate last = cheapest(before, afterwards);
    List<Candidate> path = new ArrayList<>();
    for (int i = stretches.size() - 1; i >= 0; i--) {
      path.add(last);
      Candidate earlier = cameFrom.get(i).get(last);
      if (earlier != null) {
        last = earlier;
      }
    }
    Collections.reverse(path);
    return path;
  }

  private static Candidate cheapest(
      Map<Candidate, Double> costs, ToDoubleFunction<Candidate> afterwards) {
    return costs.entrySet().stream()
        .min(
            java.util.Comparator.comparingDouble(
                    (Map.Entry<Candidate, Double> e) ->
                        e.getValue() + afterwards.applyAsDouble(e.getKey()))
                .thenComparing(e -> e.getKey().id())
                .thenComparing(e -> e.getKey().handpiece().id()))
        .orElseThrow()
        .getKey();
  }

  private record Way(@org.jspecify.annotations.Nullable Candidate from, double cost) {}

  /** Cheapest ways to arrive, kept overall, by handpiece and by instrument. */
  private static final class Best {
    private final Map<String, Way> byHandpiece = new HashMap<>();
    private final Map<String, Way> byInstrument = new HashMap<>();
    private Way overall = new Way(null, Double.POSITIVE_INFINITY);
    private final boolean first;

    Best(Map<Candidate, Double> before) {
      first = before.isEmpty();
      before.forEach(
          (c, cost) -> {
            Way way = new Way(c, cost);
            overall = cheaper(overall, way);
            byHandpiece.merge(c.handpiece().id(), way, Best::cheaper);
            byInstrument.merge(key(c), way, Best::cheaper);
          });
    }

    Way into(Candidate c) {
      if (first) {
        return new Way(null, 0);
      }
      Way best = new Way(overall.from(), overall.cost() + Prices.HANDPIECE_S);
      Way handpiece = byHandpiece.get(c.handpiece().id());
      if (handpiece != null) {
        best = cheaper(best, new Way(handpiece.from(), handpiece.cost() + Prices.CHANGE_S));
      }
      Way same = byInstrument.get(key(c));
      return same == null ? best : cheaper(best, same);
    }

    private static String key(Candidate c) {
      return c.handpiece().id() + '/' + c.id();
    }

    private static Way cheaper(Way a, Way b) {
      if (a.from() == null || b.from() == null || a.cost() != b.cost()) {
        return b.cost() < a.cost() ? b : a;
      }
      return key(b.from()).compareTo(key(a.from())) < 0 ? b : a;
    }
  }
}
