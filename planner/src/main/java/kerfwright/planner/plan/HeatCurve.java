package kerfwright.planner.plan;

import java.util.List;

/**
 * Rise at the pulp wall against time, with its band; lists of the same length.
 *
 * @param timesS times from the start of the first step
 * @param lowK 5th percentile of the samples
 * @param typicalK the axisymmetric simulation of the plan's own figures
 * @param highK 95th percentile of the samples
 */
public record HeatCurve(
    List<Double> timesS, List<Double> lowK, List<Double> typicalK, List<Double> highK) {
  public HeatCurve {
    timesS = List.copyOf(timesS);
    lowK = List.copyOf(lowK);
    typicalK = List.copyOf(typicalK);
    highK = List.copyOf(highK);
  }
}
