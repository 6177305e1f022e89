package kerfwright.practice.horizon;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Shortages against stock and cost.
 *
 * @param points from one instrument of each type on, each with one more than the last
 * @param now the practice's present stock on the same weeks
 * @param weeks weeks simulated
 * @param daysPerWeek days of a week
 * @param keptDays days they were drawn from
 * @param seed seed of the draw
 */
public record StockCurve(
    List<StockPoint> points, StockPoint now, int weeks, int daysPerWeek, int keptDays, long seed) {
  public StockCurve {
    points = List.copyOf(points);
  }

  /** The cheapest point with at most this share of weeks that see a shortage. */
  public Optional<StockPoint> enough(double troubledWeeks) {
    return points.stream().filter(p -> 1 - p.quietWeeks() <= troubledWeeks + 1e-9).findFirst();
  }

  /** Instruments of each type to add to the present stock to reach a point. */
  public Map<String, Integer> toAdd(StockPoint point) {
    Map<String, Integer> add = new java.util.TreeMap<>();
    point
        .pieces()
        .forEach(
            (type, n) -> {
              int more = n - now.pieces().getOrDefault(type, 0);
              if (more > 0) {
                add.put(type, more);
              }
            });
    return add;
  }
}
