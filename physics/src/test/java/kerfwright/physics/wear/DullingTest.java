package kerfwright.physics.wear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class DullingTest {
  private static final WearConstants USUAL = WearConstants.TYPICAL;
  private static final double MEDIUM = 115e-6;

  /** Losses of medium, coarse and super-coarse grit (DC017, DC018, R01: calibration). */
  @Test
  void thePlateauByGritIsThatOfItsThreeFindings() {
    assertEquals(1 - 0.50, GrainDulling.plateau(115e-6), 1e-12);
    assertEquals(1 - 0.35, GrainDulling.plateau(137e-6), 0.03);
    assertEquals(1 - 0.25, GrainDulling.plateau(165e-6), 0.02);
    assertEquals(0.5, GrainDulling.plateau(58e-6));
    assertTrue(GrainDulling.plateau(1e-3) > 0.999);
  }

  @Test
  void newGritCutsWhollyThenRunsInThenDeclinesSlowly() {
    assertEquals(1, GrainDulling.after(USUAL, MEDIUM, 0));
    double runIn = GrainDulling.after(USUAL, MEDIUM, 10 * USUAL.runningInLives());
    assertEquals(0.5, runIn, 0.02);
    double late = GrainDulling.after(USUAL, MEDIUM, USUAL.declineLives());
    assertEquals(0.5 * Math.exp(-1), late, 1e-9);
    double half = USUAL.runningInLives() * Math.log(2);
    assertEquals(
        0.75 * Math.exp(-half / USUAL.declineLives()),
        GrainDulling.after(USUAL, MEDIUM, half),
        1e-12);
  }

  @Test
  void theSlownessIsTheIntegralOfOneOverSharpness() {
    Random random = new Random(51);
    for (int i = 0; i < 300; i++) {
      double grain = 10e-6 + 200e-6 * random.nextDouble();
      double from = 2 * random.nextDouble();
      double step = 1.2 * random.nextDouble();
      double grit = integral(u -> 1 / GrainDulling.after(USUAL, grain, u), from, step);
      assertEquals(grit, GrainDulling.slowness(USUAL, grain, from, step), 2e-3 * grit);
      double steady = random.nextDouble();
      double now = EdgeDulling.after(from);
      double edge =
          integral(u -> 1 / (steady + (1 - steady) * EdgeDulling.after(u) / now), from, step);
      assertEquals(edge, EdgeDulling.slowness(from, step, steady), 2e-3 * edge);
    }
    assertEquals(0, GrainDulling.slowness(USUAL, MEDIUM, 0.3, 0));
    assertEquals(0, EdgeDulling.slowness(0.3, 0, 0));
    assertEquals(0.7, EdgeDulling.slowness(0.3, 0.7, 1), 1e-12);
  }

  private static double integral(DoubleUnaryOperator f, double from, double step) {
    int steps = 4000;
    double sum = 0;
    for (int k = 0; k < steps; k++) {
      sum += f.applyAsDouble(from + (k + 0.5) * step / steps) * step / steps;
    }
    return sum;
  }

  /** Carbide fissure burs dulled in proportion to use (DC025). */
  @Test
  void anEdgeDullsInAStraightLineToAThirdAtTheEndOfItsLife() {
    assertEquals(1, EdgeDulling.after(0));
    assertEquals(2.0 / 3, EdgeDulling.after(Sharpness.LIFE_END / 2), 1e-12);
    assertEquals(Sharpness.WORN_OUT, EdgeDulling.after(Sharpness.LIFE_END), 1e-12);
    assertEquals(0.05, EdgeDulling.after(100));
    assertEquals(3.0, EdgeDulling.slowness(100, 3, 0), 1e-9);
    assertEquals(
        integral(u -> 1 / EdgeDulling.after(u), 0, 3), EdgeDulling.slowness(0, 3, 0), 1e-2);
  }

  @Test
  void impossibleConstantsAreRefused() {
    for (double[] bad : new double[][] {{0, 1}, {1, 0}, {Double.NaN, 1}, {1, Double.NaN}}) {
      IllegalArgumentException e =
          assertThrows(IllegalArgumentException.class, () -> new WearConstants(bad[0], bad[1]));
      assertTrue(e.getMessage().contains("above zero, got " + bad[0] + " and " + bad[1]));
    }
  }
}
