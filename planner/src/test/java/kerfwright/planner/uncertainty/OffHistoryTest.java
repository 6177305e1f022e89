package kerfwright.planner.uncertainty;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import kerfwright.planner.heat.WallHistory;
import org.junit.jupiter.api.Test;

class OffHistoryTest {
  private static WallHistory history(double... rise) {
    double[] times = new double[rise.length];
    for (int i = 0; i < times.length; i++) {
      times[i] = i;
    }
    return new WallHistory(times, rise, 36);
  }

  @Test
  void theLargestChangeIsMovedAndTheStartStays() {
    WallHistory off = OffHistory.of(history(0, 2, 4, 1), 2);
    assertArrayEquals(new double[] {0, 3, 6, 1.5}, off.riseK(), 1e-12);
    assertEquals(6, off.peakK(), 1e-12);
  }

  @Test
  void aWallThatCoolsMayWarmInstead() {
    WallHistory off = OffHistory.of(history(0, -1, -4), 6);
    assertEquals(2, off.peakK(), 1e-12);
  }

  @Test
  void aWallThatHardlyChangesGoesOffOverItsTime() {
    WallHistory off = OffHistory.of(history(0, 0, 0, 0), 2);
    assertEquals(2, off.peakK(), 1e-12);
    assertEquals(0.5, off.riseK()[0], 1e-12);
  }
}
