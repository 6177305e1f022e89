package kerfwright.physics.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kerfwright.physics.heat.field.AxisymmetricConduction;
import kerfwright.physics.heat.field.HeatMesh;
import kerfwright.physics.heat.field.HeatProbe;
import kerfwright.physics.heat.field.HeatSeries;

/** Random but repeatable work on random teeth. */
final class RandomCases {
  private final Random random;

  RandomCases(long seed) {
    random = new Random(seed);
  }

  /** A body, a schedule of one stretch and 20 s of pause, and the depth of the pulp wall. */
  record Case(HeatBody body, HeatSchedule schedule, double pulpMm) {
    HeatStretch work() {
      return schedule.stretches().get(0);
    }

    Case with(HeatStretch work) {
      return new Case(
          body,
          new HeatSchedule(schedule.spotRadiusMm(), List.of(work, schedule.stretches().get(1))),
          pulpMm);
    }

    /** The same over 1.5 mm of pulp with blood, nothing beyond. */
    Case perfused(double mlPerMinG) {
      List<HeatLayer> layers = new ArrayList<>(body.layers().subList(0, body.layers().size() - 1));
      layers.add(new HeatLayer(1.5, 0.6, 1000, 4180));
      HeatBody living = HeatBody.of(body.radiusMm(), layers, 37, Face.perfused(mlPerMinG, 37));
      return new Case(living, schedule, pulpMm);
    }

    HeatSeries solve(HeatMesh mesh, double outputS) {
      return new AxisymmetricConduction(body, schedule, List.of(HeatProbe.onAxis(pulpMm)), mesh)
          .run(outputS);
    }
  }

  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private double pick(double... values) {
    return values[random.nextInt(values.length)];
  }

  private static HeatLayer ceramic(double thicknessMm) {
    return new HeatLayer(thicknessMm, 1.2, 2450, 820);
  }

  private static HeatLayer zirconia(double thicknessMm) {
    return new HeatLayer(thicknessMm, 2.6, 6050, 460);
  }

  private static HeatLayer metal(double thicknessMm) {
    return new HeatLayer(thicknessMm, 13, 8300, 450);
  }

  private static HeatLayer cement(double thicknessMm) {
    return new HeatLayer(thicknessMm, 0.9, 2000, 1000);
  }

  Case next() {
    double spot = between(0.5, 3);
    double dentine = between(1, 3.5);
    List<HeatLayer> layers = new ArrayList<>();
    switch (random.nextInt(5)) {
      case 0 -> {}
      case 1 -> layers.add(HeatCases.enamel(1.5));
      case 2 -> layers.addAll(List.of(ceramic(1.2), metal(0.4), cement(0.1)));
      case 3 -> layers.addAll(List.of(zirconia(1), cement(0.1)));
      default -> layers.addAll(List.of(metal(1), cement(0.1)));
    }
    layers.add(HeatCases.dentine(dentine));
    double pulp = 0;
    for (HeatLayer layer : layers) {
      pulp += layer.thicknessMm();
    }
    layers.add(HeatCases.dentine(3));
    double feed = random.nextBoolean() ? 0 : 0.005 * Math.pow(20, random.nextDouble());
    double on = pick(0.4, 1, 2, 5);
    double off = pick(0.4, 1, 2, 3);
    boolean dry = random.nextInt(4) == 0;
    Coolant coolant = dry ? new Coolant(20, 25) : new Coolant(between(2000, 5000), 25);
    Coolant whileOn = random.nextBoolean() ? coolant : Coolant.NONE;
    double powerW = between(0.1, 1) * 0.4 * (dry ? 1 / 3.0 : 1);
    double flux = powerW / (Math.PI * spot * spot * 1e-6);
    double longest = feed == 0 ? 40 : (pulp - 0.8) / feed / (on / (on + off));
    HeatStretch work =
        new HeatStretch(Math.min(40, longest), flux, on, off, whileOn, coolant, coolant, feed);
    return new Case(
        HeatBody.of(Math.max(5, spot + 2), layers, 37, Face.held(37)),
        new HeatSchedule(spot, List.of(work, HeatStretch.pause(20, coolant))),
        pulp);
  }
}
