package kerfwright.planner.evidence.figure;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.evidence.ConditionKind;
import kerfwright.physics.heat.HeatLayer;
import kerfwright.planner.heat.CutHeat;
import kerfwright.planner.heat.HeatInputs;
import kerfwright.planner.heat.PulpWall;

/**
 * The tooth of a heat test: an outer layer over dentine, cut as in a plan.
 *
 * @param wall the layers to the pulp wall
 * @param cuts the one cut
 * @param inputs the uncertain inputs of the draw
 */
record ToothUnderTest(PulpWall wall, List<CutHeat> cuts, HeatInputs inputs) {
  private static final double LONGEST_S = 1800;

  static ToothUnderTest of(Trial trial) {
    CutHeat cut =
        new CutHeat(
            seconds(trial),
            trial.of(ConditionKind.CONTACT),
            trial.of(ConditionKind.PAUSE),
            trial.cut().powerW(),
            trial.of(ConditionKind.DEEPENS),
            0,
            trial.contact().areaM2() * 1e6);
    PulpWall wall =
        new PulpWall(
            layers(trial, trial.of(ConditionKind.DEEPENS)),
            trial.of(ConditionKind.AREA),
            trial.of(ConditionKind.WATER));
    return new ToothUnderTest(
        wall, List.of(cut), inputs(trial, trial.of(ConditionKind.WATER_TEMPERATURE)));
  }

  static HeatInputs inputs(Trial trial, double coolantC) {
    return trial
        .draw()
        .heatInputs()
        .asTested(coolantC, trial.startC(), trial.of(ConditionKind.PERFUSION));
  }

  /** Dentine reaches from the outer layer to what remains below the cut. */
  static List<HeatLayer> layers(Trial trial, double deepensMm) {
    double cover = trial.of(ConditionKind.COVER);
    double below = trial.of(ConditionKind.REMAINING) + Math.max(0, deepensMm - cover);
    List<HeatLayer> layers = new ArrayList<>();
    if (cover > 0) {
      layers.add(HeatLayer.of(cover, trial.cover()));
    }
    layers.add(HeatLayer.of(below, trial.dentine()));
    return layers;
  }

  /** Cutting time told or assumed, or what the volume takes, as far off as rates are. */
  private static double seconds(Trial trial) {
    if (!trial.has(ConditionKind.VOLUME)) {
      return trial.of(ConditionKind.SECONDS);
    }
    double volumeM3 = trial.of(ConditionKind.VOLUME) * 1e-9;
    double rate = trial.removalM3PerS() * StrictMath.exp(trial.rateOff());
    return Math.min(LONGEST_S, volumeM3 / rate);
  }
}
