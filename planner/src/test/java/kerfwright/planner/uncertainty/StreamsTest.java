package kerfwright.planner.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import org.junit.jupiter.api.Test;

class StreamsTest {
  private static final int MANY = 20_000;

  private static double[] drawn(ToDoubleFunction<Streams> one) {
    return IntStream.range(0, MANY)
        .mapToDouble(s -> one.applyAsDouble(new Streams(7, s)))
        .toArray();
  }

  private static double share(double[] values, double below) {
    return Arrays.stream(values).filter(v -> v < below).count() / (double) values.length;
  }

  @Test
  void anotherMaterialDrawnBeforeMovesNoOther() {
    Material enamel = Materials.packaged().get("enamel");
    for (int sample = 0; sample < 50; sample++) {
      Draw alone = new Draw(3, sample);
      Draw after = new Draw(3, sample);
      Materials.packaged().all().forEach(after::substance);
      after.share("condition load");
      assertEquals(alone.substance(enamel), after.substance(enamel));
      assertEquals(alone.heatInputs(), after.heatInputs());
    }
  }

  @Test
  void namesSeedsAndSamplesAllTell() {
    Streams one = new Streams(1, 0);
    assertEquals(one.uniform("a"), new Streams(1, 0).uniform("a"));
    assertNotEquals(one.uniform("a"), one.uniform("b"));
    assertNotEquals(one.uniform("a"), new Streams(2, 0).uniform("a"));
    assertNotEquals(one.uniform("a"), new Streams(1, 2).uniform("a"));
    assertEquals(1, one.uniform("a") + new Streams(1, 1).uniform("a"), 1e-12, "mirrored");
    assertEquals(0, one.normal("a") + new Streams(1, 1).normal("a"), 1e-12);
  }

  @Test
  void uniformNumbersAreEvenAndNamesDoNotFollowEachOther() {
    double[] a = drawn(s -> s.uniform("load"));
    double[] b = drawn(s -> s.uniform("grain"));
    for (double below : new double[] {0.05, 0.25, 0.5, 0.75, 0.95}) {
      assertEquals(below, share(a, below), 5 * Math.sqrt(below * (1 - below) / MANY));
    }
    double product = 0;
    for (int i = 0; i < MANY; i++) {
      product += (a[i] - 0.5) * (b[i] - 0.5) * 12 / MANY;
    }
    assertEquals(0, product, 5 / Math.sqrt(MANY), "correlation of two names");
  }

  @Test
  void normalAndStudentNumbersHaveTheirPercentiles() {
    double[] normal = drawn(s -> s.normal("n"));
    assertEquals(0.95, share(normal, 1.6449), 0.008);
    assertEquals(0.5, share(normal, 0), 0.018);
    double[] student = drawn(s -> s.t("t", 4));
    assertEquals(0.95, share(student, 2.132), 0.008, "t table, four degrees of freedom");
    assertEquals(0.05, share(student, -2.132), 0.008);
  }

  @Test
  void percentilesOfStudentAreThoseOfTheTable() {
    assertEquals(2.920, OwnLevel.t95(2), 0.06);
    assertEquals(2.353, OwnLevel.t95(3), 0.02);
    assertEquals(2.015, OwnLevel.t95(5), 0.005);
    assertEquals(1.697, OwnLevel.t95(30), 0.001);
  }

  @Test
  void theErrorOfAnEndIsThatOfManyRuns() {
    int samples = 1000;
    double[] ends = new double[200];
    double told = 0;
    for (int run = 0; run < ends.length; run++) {
      int seed = run;
      double[] values =
          IntStream.range(0, samples).mapToDouble(s -> new Streams(seed, s).normal("e")).toArray();
      ends[run] = Percentiles.of(values).high();
      told += Percentiles.errorOfEnds(values, samples) * 2 * 1.6449 / ends.length;
    }
    double mean = Arrays.stream(ends).average().orElseThrow();
    double sd =
        Math.sqrt(Arrays.stream(ends).map(e -> (e - mean) * (e - mean)).average().orElseThrow());
    assertTrue(told > 0.7 * sd && told < 1.6 * sd, told + " told, " + sd + " seen");
  }
}
