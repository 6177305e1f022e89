package kerfwright.planner.evidence.figure;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.evidence.ConditionKind;
import kerfwright.physics.heat.Coolant;
import kerfwright.physics.heat.Face;
import kerfwright.physics.heat.HeatBody;
import kerfwright.physics.heat.HeatLayer;
import kerfwright.physics.heat.HeatSchedule;
import kerfwright.physics.heat.HeatStretch;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.planner.heat.PulpWall;

/**
 * Warmest temperature at the pulp wall when something hot is held in the mouth, degC. Nothing is
 * cut: it tests the layers and the conduction alone. The hot drink meets the crown from all sides,
 * so that no heat passes the middle of the pulp.
 *
 * @param column works out one history after the other
 */
record MouthHeatFigure(LayeredColumn column) implements Figure {
  private static final double EVERY_S = 0.5;
  private static final double AFTER_S = 30;
  private static final double TOOTH_RADIUS_MM = 4;

  private static final int RAMP = 10;

  @Override
  public double of(Trial trial, String unit) {
    double hot = trial.of(ConditionKind.MOUTH_TEMPERATURE);
    double body = trial.of(ConditionKind.BODY_TEMPERATURE);
    double film = trial.of(ConditionKind.FILM);
    List<HeatStretch> stretches = new ArrayList<>();
    for (int cycle = 0; cycle < trial.of(ConditionKind.CYCLES); cycle++) {
      add(stretches, trial.of(ConditionKind.HOLD), film, hot);
      for (int i = 0; i < RAMP; i++) {
        double fallen = hot + (body - hot) * (i + 0.5) / RAMP;
        add(stretches, trial.of(ConditionKind.FALL) / RAMP, film, fallen);
      }
      add(stretches, trial.of(ConditionKind.REST), film, body);
    }
    add(stretches, AFTER_S, film, body);
    List<HeatLayer> layers = new ArrayList<>(ToothUnderTest.layers(trial, 0));
    double wallMm = layers.stream().mapToDouble(HeatLayer::thicknessMm).sum();
    layers.add(PulpWall.pulp(PulpWall.PULP_MM));
    return column.run(
            HeatBody.of(TOOTH_RADIUS_MM, layers, body, Face.insulated()),
            new HeatSchedule(TOOTH_RADIUS_MM, stretches),
            new double[] {wallMm},
            EVERY_S)
        .peakProbesC()[0];
  }

  private static void add(List<HeatStretch> stretches, double seconds, double film, double atC) {
    if (seconds > 0) {
      stretches.add(HeatStretch.pause(seconds, new Coolant(film, atC)));
    }
  }
}
