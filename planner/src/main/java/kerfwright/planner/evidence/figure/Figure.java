package kerfwright.planner.evidence.figure;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.evidence.ConditionKind;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.physics.cutting.Drive;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.heat.Coolant;
import kerfwright.physics.heat.Face;
import kerfwright.physics.heat.HeatBody;
import kerfwright.physics.heat.HeatLayer;
import kerfwright.physics.heat.HeatSchedule;
import kerfwright.physics.heat.HeatStretch;
import kerfwright.physics.heat.MovingHeatSource;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.physics.material.Substance;
import kerfwright.planner.heat.Bore;
import kerfwright.planner.heat.CutHeat;
import kerfwright.planner.heat.HeatInputs;
import kerfwright.planner.heat.PulpWall;
import kerfwright.planner.heat.RootSurface;
import kerfwright.planner.heat.WallHistory;
import kerfwright.quantity.Torque;

/**
 * One kind of figure that the models compute for a published test.
 *
 * @param kind which
 * @param column works out one history of temperature after the other
 */
public record Figure(EvidenceCase.Figure kind, LayeredColumn column) {
  private static final double PULP_EVERY_S = 1;
  private static final int TORQUES = 200;
  private static final double MOUTH_EVERY_S = 0.5;
  private static final double MOUTH_AFTER_S = 30;
  private static final double TOOTH_RADIUS_MM = 4;
  private static final int RAMP = 10;

  public Figure(EvidenceCase.Figure kind) {
    this(kind, new LayeredColumn());
  }

  /** Whether a heat history is computed for it, which takes a hundred times longer. */
  public boolean slow() {
    return switch (kind) {
      case PULP_RISE, SURFACE_RISE, MOUTH_HEAT, ROOT_RISE -> true;
      default -> false;
    };
  }

  /** The figure in a unit of the data files. */
  public double of(Trial trial, String unit) {
    return switch (kind) {
      case REMOVAL -> removal(trial, unit);
      case SPEED_UNDER_LOAD -> trial.rpm();
      case POWER_SPEED -> powerSpeed(trial.drive());
      case TANGENTIAL_FORCE -> trial.cut().tangentialN();
      case SPECIFIC_ENERGY -> trial.cut().powerW() / trial.removalM3PerS() * 1e-9;
      case CHIP_THICKNESS -> trial.cut().chipThicknessM() * 1e9;
      case BRITTLE_SHARE -> trial.cut().brittleShare();
      case USE_LOSS -> 100 * trial.lossOver(trial.of(ConditionKind.VOLUME) * 1e-9);
      case STERILISATION_LOSS -> sterilisationLoss(trial);
      case ROUGHNESS -> trial.part().raM(trial.work(), trial.cut()) * 1e6;
      case PULP_RISE -> pulpRise(ToothUnderTest.of(trial));
      case SURFACE_RISE -> surfaceRise(trial, ToothUnderTest.of(trial));
      case ROOT_RISE -> rootRise(trial, ToothUnderTest.of(trial));
      case MOUTH_HEAT -> mouthHeat(trial);
    };
  }

  /** Removal in whatever unit a paper tells it: rate by volume or mass, mass or depth in a time. */
  public static double removal(Trial trial, String unit) {
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

  /** Share of the free speed at which a drive gives most power, percent, by trying torques. */
  private static double powerSpeed(Drive drive) {
    double best = 0;
    double bestPower = 0;
    for (int i = 1; i < TORQUES; i++) {
      Torque torque = new Torque(drive.stallTorque().newtonMetres() * i / TORQUES);
      double speed = drive.speedUnder(torque, drive.freeSpeed()).radiansPerSecond();
      if (speed * torque.newtonMetres() > bestPower) {
        bestPower = speed * torque.newtonMetres();
        best = speed / drive.freeSpeed().radiansPerSecond();
      }
    }
    return best * 100;
  }

  /**
   * How much less a working part cuts for steam sterilising, percent: after some sterilisations, or
   * on average over cycles of cutting that each end with one.
   */
  private static double sterilisationLoss(Trial trial) {
    if (!trial.has(ConditionKind.CYCLES)) {
      return 100 * (1 - trial.afterSterilising());
    }
    int cycles = (int) trial.of(ConditionKind.CYCLES);
    double sum = 0;
    for (int done = 0; done < cycles; done++) {
      sum += trial.afterSterilising(done);
    }
    return 100 * (1 - sum / cycles);
  }

  /**
   * Change of temperature at the pulp wall, K: the greatest rise or the greatest fall, whichever is
   * larger, from the start of the cut to a minute after it. A bench study reports the same.
   */
  private double pulpRise(ToothUnderTest tooth) {
    return largest(tooth.wall().quick(column, tooth.cuts(), tooth.inputs(), PULP_EVERY_S));
  }

  private static double largest(WallHistory history) {
    double largest = 0;
    for (double rise : history.riseK()) {
      largest = Math.abs(rise) > Math.abs(largest) ? rise : largest;
    }
    return largest;
  }

  /** Greatest change at the outer surface of an extracted tooth's root, K. */
  private static double rootRise(Trial trial, ToothUnderTest tooth) {
    double diameter = trial.of(ConditionKind.DIAMETER);
    return largest(
        RootSurface.onTheBench(
            trial.of(ConditionKind.REMAINING),
            trial.dentine(),
            Bore.canal(diameter, trial.of(ConditionKind.AREA) / (Math.PI * diameter)),
            tooth.cuts(),
            trial.of(ConditionKind.WATER),
            tooth.inputs()));
  }

  /**
   * Greatest rise of the surface, K, as a camera sees it: the hot spot under the instrument, moving
   * with the hand, on top of the opening's mean rise.
   */
  private double surfaceRise(Trial trial, ToothUnderTest tooth) {
    HeatInputs inputs = tooth.inputs();
    CutHeat cut = tooth.cuts().get(0);
    double entering = inputs.enteringW(cut, inputs.wettedShare(cut, tooth.wall().flowMlPerMin()));
    Engagement contact = trial.contact();
    Substance surface = trial.cover();
    double spotK =
        MovingHeatSource.peakRiseK(
            entering / contact.areaM2(),
            Math.sqrt(contact.areaM2() / Math.PI),
            inputs.handMPerS(),
            surface.conductivityWPerMK(),
            surface.conductivityWPerMK()
                / (surface.densityKgPerM3() * surface.specificHeatJPerKgK()));
    return tooth.wall().floorPeakK(column, tooth.cuts(), inputs) + spotK;
  }

  /**
   * Warmest temperature at the pulp wall when something hot is held in the mouth, degC. Nothing is
   * cut: it tests the layers and the conduction alone. The hot drink meets the crown from all
   * sides, so that no heat passes the middle of the pulp.
   */
  private double mouthHeat(Trial trial) {
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
    add(stretches, MOUTH_AFTER_S, film, body);
    List<HeatLayer> layers = new ArrayList<>(ToothUnderTest.layers(trial, 0));
    double wallMm = layers.stream().mapToDouble(HeatLayer::thicknessMm).sum();
    layers.add(PulpWall.pulp(PulpWall.PULP_MM));
    return column.run(
            HeatBody.of(TOOTH_RADIUS_MM, layers, body, Face.insulated()),
            new HeatSchedule(TOOTH_RADIUS_MM, stretches),
            new double[] {wallMm},
            MOUTH_EVERY_S)
        .peakProbesC()[0];
  }

  private static void add(List<HeatStretch> stretches, double seconds, double film, double atC) {
    if (seconds > 0) {
      stretches.add(HeatStretch.pause(seconds, new Coolant(film, atC)));
    }
  }
}
