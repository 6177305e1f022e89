package kerfwright.practice.reprocessing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import kerfwright.practice.setting.SettingValues;
import org.junit.jupiter.api.Test;

class ReprocessingSettingTest {
  private static ReprocessingSetting set(String... values) {
    Map<String, String> all = new java.util.HashMap<>();
    for (int i = 0; i < values.length; i += 2) {
      all.put(values[i], values[i + 1]);
    }
    return ReprocessingSetting.of(new SettingValues(1, all));
  }

  @Test
  void everyCycleHasATimeOfItsOwnAndTheUsualOneIsPlannedWith() {
    ReprocessingSetting own =
        set(
            "reprocessing.cycle-b-121-min", "70",
            "reprocessing.cycle-b-134-min", "40",
            "reprocessing.cool-min", "10");
    assertEquals(40, own.minutesOf(Cycle.B134));
    assertEquals(70, own.minutesOf(Cycle.B121));
    assertEquals(60, own.minutesOf(Cycle.S134));
    assertEquals(50, own.loadMinutes());
    assertEquals(
        80,
        set(
                "reprocessing.usual-cycle", "b-121",
                "reprocessing.cycle-b-121-min", "70",
                "reprocessing.cool-min", "10")
            .loadMinutes());
  }

  @Test
  void aPracticeThatSetOneTimeForAllCyclesKeepsIt() {
    ReprocessingSetting own =
        set("reprocessing.cycle-min", "45", "reprocessing.cycle-b-121-min", "55");
    assertEquals(45, own.minutesOf(Cycle.B134));
    assertEquals(55, own.minutesOf(Cycle.B121));
  }

  @Test
  void noCycleIsShorterThanItsExposureWhateverIsSet() {
    assertEquals(3, set("reprocessing.cycle-b-134-min", "0").minutesOf(Cycle.B134));
  }
}
