package kerfwright.physics.heat;

import java.util.List;
import kerfwright.physics.heat.field.AxisymmetricConduction;
import kerfwright.physics.heat.field.HeatMesh;
import kerfwright.physics.heat.field.HeatProbe;
import kerfwright.physics.heat.field.HeatSeries;

/** Bodies and schedules the tests share. */
final class HeatCases {
  static final double K_DENTINE = 0.48;
  static final double A_DENTINE = 2.01e-7;
  static final double K_ENAMEL = 0.81;
  static final double A_ENAMEL = 4.08e-7;

  /** So large that the surface takes the coolant's temperature within 0.001 K. */
  static final double HELD = 1e8;

  private HeatCases() {}

  /** Dentine as in Lin and others, Infrared Phys Technol 2010. */
  static HeatLayer dentine(double thicknessMm) {
    return new HeatLayer(thicknessMm, K_DENTINE, 1000, K_DENTINE / A_DENTINE / 1000);
  }

  /** Enamel, same source. */
  static HeatLayer enamel(double thicknessMm) {
    return new HeatLayer(thicknessMm, K_ENAMEL, 1000, K_ENAMEL / A_ENAMEL / 1000);
  }

  /** A thin rod heated over its whole top: one-dimensional. */
  static HeatBody rod(double initialC, Face bottom, HeatLayer... layers) {
    return HeatBody.of(1, List.of(layers), initialC, bottom);
  }

  /** The whole top heated and cut without a break, washed by nothing. */
  static HeatStretch heated(double durationS, double fluxWPerM2, double feedMmPerS) {
    return new HeatStretch(
        durationS, fluxWPerM2, durationS, 0, Coolant.NONE, Coolant.NONE, Coolant.NONE, feedMmPerS);
  }

  /** The whole top washed. */
  static HeatStretch washed(double durationS, double h, double temperatureC, double feedMmPerS) {
    Coolant coolant = new Coolant(h, temperatureC);
    return new HeatStretch(durationS, 0, durationS, 0, coolant, coolant, coolant, feedMmPerS);
  }

  /** Temperatures at depths on the axis of a rod, every outputS. */
  static HeatSeries along(
      HeatBody body, HeatStretch stretch, HeatMesh mesh, double outputS, double... depthsMm) {
    List<HeatProbe> probes = java.util.Arrays.stream(depthsMm).mapToObj(HeatProbe::onAxis).toList();
    HeatSchedule schedule = new HeatSchedule(body.radiusMm(), List.of(stretch));
    return new AxisymmetricConduction(body, schedule, probes, mesh).run(outputS);
  }

  /** Ceramic, metal, cement, dentine: the stack of the benchmark H1. */
  static HeatBody crown() {
    return HeatBody.of(
        5,
        List.of(
            new HeatLayer(1.2, 1.0, 2400, 850),
            new HeatLayer(0.4, 13, 8300, 450),
            new HeatLayer(0.1, 0.9, 2000, 1000),
            new HeatLayer(4.3, 0.58, 2140, 1260)),
        36,
        Face.held(36));
  }

  /** The work of the benchmarks H1 (feed 0) and H2 (feed 0.05 mm/s). */
  static HeatSchedule strokesOnCrown(double feedMmPerS) {
    return new HeatSchedule(
        0.8, List.of(HeatStretch.strokes(20, 4e5, 2, 1, new Coolant(2000, 25), feedMmPerS)));
  }

  /** The third probe lies on the uncut surface, or on the floor of the cavity. */
  static final List<HeatProbe> CROWN_PROBES =
      List.of(HeatProbe.onAxis(1.7), HeatProbe.onAxis(4.5), HeatProbe.onAxis(0));
}
