package kerfwright.planner.evidence.figure;

import kerfwright.catalogue.evidence.ConditionKind;

/** Removal in whatever unit a paper tells it: rate by volume or mass, mass or depth in a time. */
public record RemovalFigure() implements Figure {
  @Override
  public double of(Trial trial, String unit) {
    double minutes = trial.has(ConditionKind.MINUTES) ? trial.of(ConditionKind.MINUTES) : 0;
    double mm3 =
        minutes > 0 ? trial.volumeM3(minutes * 60) * 1e9 : trial.removalM3PerS() * 60 * 1e9;
    double mm3PerMin = minutes > 0 ? mm3 / minutes : mm3;
    double mgPerMm3 = trial.work().densityKgPerM3() * 1e-3;
    return switch (unit) {
      case "mm3/s" -> mm3PerMin / 60;
      case "mg/min" -> mm3PerMin * mgPerMm3;
      case "g" -> mm3 * mgPerMm3 * 1e-3;
      // the head sinks into the work edgewise: its slot is as wide as the head
      case "mm" -> mm3 / (trial.of(ConditionKind.DIAMETER) * trial.of(ConditionKind.ENGAGED));
      default -> mm3PerMin;
    };
  }
}
