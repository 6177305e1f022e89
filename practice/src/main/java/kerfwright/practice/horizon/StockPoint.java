package kerfwright.practice.horizon;

import java.util.Map;

/**
 * One point of the curve.
 *
 * @param pieces instruments of each type
 * @param added the type of which one was added last, empty for the first point
 * @param cost cost of the whole stock, in the units of the prices
 * @param shortagesPerWeek shortages of a usual week, on average over the simulated weeks
 * @param quietWeeks share of the simulated weeks without any shortage
 */
public record StockPoint(
    Map<String, Integer> pieces,
    String added,
    double cost,
    double shortagesPerWeek,
    double quietWeeks) {
  public StockPoint {
    pieces = Map.copyOf(pieces);
  }
}
