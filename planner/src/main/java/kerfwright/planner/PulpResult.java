package kerfwright.planner;

import java.util.ArrayList;
import java.util.List;
import kerfwright.planner.heat.WallHistory;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.HeatCurve;
import kerfwright.planner.plan.PulpHeat;
import kerfwright.planner.uncertainty.SampledPlan;

/** Joins the axisymmetric simulation and the samples into what the plan says of the pulp. */
final class PulpResult {
  /** Of work cut dry only words are shown. */
  private static final HeatCurve NO_CURVE =
      new HeatCurve(List.of(), List.of(), List.of(), List.of());

  private PulpResult() {}

  static PulpHeat of(WallHistory shown, SampledPlan sampled, double leftMm, boolean dry) {
    // The samples run on the quick column; what it lies off the axisymmetric result shifts the
    // band.
    double shift = shown.peakK() - sampled.peakK().typical();
    Estimate peak = around(shown.peakK(), sampled.peakK(), shift);
    Estimate above = around(shown.secondsAboveLimit(), sampled.secondsAbove(), 0);
    Estimate dose = around(shown.cem43Min(), sampled.cem43Min(), 0);
    return new PulpHeat(
        peak,
        above,
        WallHistory.LIMIT_K,
        dose,
        around(leftMm, sampled.remainingDentineMm(), 0),
        dry ? NO_CURVE : curve(shown, sampled));
  }

  private static Estimate around(double typical, Estimate band, double shift) {
    double low = Math.max(0, Math.min(typical, band.low() + shift));
    return new Estimate(low, typical, Math.max(typical, band.high() + shift));
  }

  private static HeatCurve curve(WallHistory shown, SampledPlan sampled) {
    List<Double> times = new ArrayList<>();
    List<Double> low = new ArrayList<>();
    List<Double> typical = new ArrayList<>();
    List<Double> high = new ArrayList<>();
    for (int i = 0; i < sampled.curveTimesS().length; i++) {
      double rise = shown.at(sampled.curveTimesS()[i]);
      times.add(sampled.curveTimesS()[i]);
      typical.add(rise);
      low.add(Math.min(rise, sampled.curveLowK()[i]));
      high.add(Math.max(rise, sampled.curveHighK()[i]));
    }
    return new HeatCurve(times, low, typical, high);
  }
}
