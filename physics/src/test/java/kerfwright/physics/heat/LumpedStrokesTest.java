package kerfwright.physics.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import kerfwright.physics.heat.column.LayeredColumn;
import org.junit.jupiter.api.Test;

/** The lumping column against the one that follows every stroke: long work on random teeth. */
class LumpedStrokesTest {
  private static final LayeredColumn EVERY_STROKE = new LayeredColumn();
  private static final LayeredColumn LUMPING = LayeredColumn.lumping();

  @Test
  void longWorkStaysWithinTheStatedShareOfItsGreatestChange() {
    RandomCases cases = new RandomCases(20_611);
    int count = 150;
    double[] share = new double[count];
    int stepsOfAll = 0;
    int stepsOfLumps = 0;
    for (int n = 0; n < count; n++) {
      RandomCases.Case one = cases.next().perfused(n % 3 * 0.5);
      HeatSchedule longer = lasting(one, 60 * (1 + n % 10));
      ColumnSeries all = EVERY_STROKE.run(one.body(), longer, new double[] {one.pulpMm()}, 0.5);
      ColumnSeries lumps = LUMPING.run(one.body(), longer, new double[] {one.pulpMm()}, 0.5);
      double change = 1;
      double off = 0;
      for (int i = 0; i < all.timesS().length; i++) {
        change = Math.max(change, Math.abs(all.probesC()[0][i] - 37));
        off = Math.max(off, Math.abs(all.probesC()[0][i] - lumps.probesC()[0][i]));
      }
      share[n] = off / change;
      stepsOfAll += all.steps();
      stepsOfLumps += lumps.steps();
    }
    Arrays.sort(share);
    String found = "median " + share[count / 2] + ", 98 % " + share[49 * count / 50];
    assertTrue(share[49 * count / 50] <= LayeredColumn.LUMPED_SHARE, found);
    assertTrue(stepsOfLumps < 0.3 * stepsOfAll, stepsOfLumps + " of " + stepsOfAll);
  }

  private static HeatSchedule lasting(RandomCases.Case one, double seconds) {
    HeatStretch s = one.work();
    double slower = s.durationS() / seconds;
    HeatStretch work =
        new HeatStretch(
            seconds,
            s.fluxWPerM2(),
            s.onS(),
            s.offS(),
            s.spotWhileOn(),
            s.spotWhileOff(),
            s.outside(),
            s.feedMmPerS() * slower);
    return one.with(work).schedule();
  }

  /** 10 ms of stroke and pause: nothing ripples, so that the mean is a steady half of the flux. */
  @Test
  void strokesTooShortToRippleAreHalfTheFlux() {
    HeatBody body = HeatBody.of(14, List.of(HeatCases.dentine(8)), 0, Face.insulated());
    HeatStretch strokes =
        new HeatStretch(20, 2e5, 0.01, 0.01, Coolant.NONE, Coolant.NONE, Coolant.NONE, 0);
    ColumnSeries series =
        LUMPING.run(body, new HeatSchedule(2, List.of(strokes)), new double[] {1}, 1);
    for (int second : new int[] {5, 10, 20}) {
      double disc =
          ClosedForms.disc(1e-3, 2e-3, 1e5, HeatCases.K_DENTINE, HeatCases.A_DENTINE, second);
      assertEquals(disc, series.probesC()[0][second - 1], 0.05 * disc + 0.1, second + " s");
    }
  }

  /**
   * A slab held cold behind under strokes: in the end the mean floor carries the mean flux, less
   * what the water takes in the pauses from a floor cooler than the mean.
   */
  @Test
  void strokesAgainstWaterEndAtTheSameMean() {
    HeatBody body = HeatBody.of(20, List.of(HeatCases.dentine(3)), 37, Face.held(37));
    Coolant water = new Coolant(4000, 25);
    HeatStretch strokes = new HeatStretch(400, 2e4, 4, 4, Coolant.NONE, water, water, 0);
    HeatSchedule schedule = new HeatSchedule(3, List.of(strokes));
    double all = mean(EVERY_STROKE.run(body, schedule, new double[] {1.5}, 0.25));
    double lumped = mean(LUMPING.run(body, schedule, new double[] {1.5}, 0.25));
    assertEquals(all, lumped, 0.02 * Math.abs(all - 37));
  }

  /** Over the middle, where strokes are lumped. */
  private static double mean(ColumnSeries series) {
    return Arrays.stream(series.probesC()[0], 800, 1280).average().orElseThrow();
  }
}
