package kerfwright.physics.cutting;

import static kerfwright.physics.TestSubstances.logUniform;

import java.util.Random;
import kerfwright.physics.TestSubstances;
import kerfwright.physics.material.Substance;

/**
 * Seeded draws over more than the whole space the planner may ask for: grains 5 to 250 um, loads 0
 * to 10 N, rim speeds 0 to 60 m/s, water 0 to 150 mL/min, heads 0.3 to 6 mm, depths to a full slot,
 * 1 to 40 blades.
 */
final class RandomCuts {
  private final Random random;

  RandomCuts(long seed) {
    random = new Random(seed);
  }

  Substance work() {
    return TestSubstances.any(random);
  }

  AbrasiveTool abrasive() {
    return new AbrasiveTool(
        logUniform(random, 5e-6, 250e-6),
        0.1 + 0.5 * random.nextDouble(),
        logUniform(random, 0.3e9, 100e9),
        0.1 + 0.9 * random.nextDouble(),
        random.nextInt(10) == 0 ? 0 : logUniform(random, 0.1e-6, 20e-6));
  }

  BladedTool bladed() {
    return new BladedTool(
        1 + random.nextInt(40),
        logUniform(random, 0.5e-6, 30e-6),
        0.3 + 0.7 * random.nextDouble(),
        logUniform(random, 0.3e9, 20e9),
        random.nextInt(10) == 0 ? 0 : logUniform(random, 0.1e-6, 20e-6),
        logUniform(random, 1e3, 1e7));
  }

  Engagement contact() {
    double diameter = logUniform(random, 0.3e-3, 6e-3);
    return new Engagement(
        diameter, logUniform(random, 0.05e-3, 15e-3), diameter * logUniform(random, 1e-4, 1));
  }

  OperatingPoint point() {
    return new OperatingPoint(
        random.nextInt(20) == 0 ? 0 : logUniform(random, 1e-4, 10),
        random.nextInt(20) == 0 ? 0 : logUniform(random, 0.01, 60),
        random.nextInt(5) == 0 ? 0 : 150 * random.nextDouble(),
        0.01 + 0.99 * random.nextDouble(),
        random.nextInt(5) == 0 ? Double.POSITIVE_INFINITY : logUniform(random, 0.1, 20));
  }

  double factor() {
    return 1 + 3 * random.nextDouble();
  }
}
