package kerfwright.practice.horizon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.Stock;
import org.junit.jupiter.api.Test;

class StockStudyTest {
  /** So many appointments at once, each with one round and no time to reprocess. */
  private static Day atOnce(int appointments, int life) {
    List<Appointment> all = new ArrayList<>();
    for (int i = 0; i < appointments; i++) {
      all.add(new Appointment("A" + i, 0, 60, List.of("round"), "chair " + i));
    }
    return new Day(
        LocalTime.of(8, 0),
        120,
        20,
        45,
        15,
        1,
        4,
        List.of(new Stock("round", life, List.of(0, 0))),
        all,
        FixedFacts.NONE);
  }

  private static StockCurve curve(List<Day> days, long seed) {
    return new StockStudy(days, type -> type.equals("flame") ? 3 : 1, 20, seed)
        .curve(p -> {}, () -> false);
  }

  @Test
  void asManyAreNeededAsAreUsedAtOnce() {
    StockCurve curve = curve(List.of(atOnce(4, 1000)), 1);
    assertEquals(Map.of("round", 4), curve.enough(0).orElseThrow().pieces());
    assertEquals(4, curve.points().size());
    assertEquals(15, curve.points().get(0).shortagesPerWeek(), 1e-9);
    assertEquals(10, curve.now().shortagesPerWeek(), 1e-9);
    assertEquals(Map.of("round", 2), curve.toAdd(curve.enough(0).orElseThrow()));
  }

  @Test
  void moreStockNeverCostsLessAndEndsShortagesFromPointToPoint() {
    StockCurve curve = curve(List.of(atOnce(2, 9), busy()), 3);
    for (int i = 1; i < curve.points().size(); i++) {
      StockPoint before = curve.points().get(i - 1);
      StockPoint after = curve.points().get(i);
      assertTrue(after.cost() > before.cost());
      assertTrue(after.shortagesPerWeek() < before.shortagesPerWeek());
      assertTrue(after.quietWeeks() >= before.quietWeeks() - 1e-9);
    }
    assertEquals(0, curve.points().get(curve.points().size() - 1).shortagesPerWeek(), 1e-9);
  }

  @Test
  void theSameSeedGivesTheSameCurveAndAnotherGivesOtherWeeks() {
    List<Day> days = List.of(atOnce(1, 3), atOnce(3, 3), busy());
    assertEquals(curve(days, 7), curve(days, 7));
    assertTrue(!curve(days, 7).points().equals(curve(days, 8).points()));
  }

  @Test
  void aStoppedStudyKeepsWhatItHas() {
    StockCurve curve =
        new StockStudy(List.of(atOnce(4, 9)), type -> 1, 4, 1).curve(p -> {}, () -> true);
    assertEquals(1, curve.points().size());
  }

  /** A day on which a flame and a round are used one after the other. */
  private static Day busy() {
    List<Appointment> all = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      List<String> needs = i % 2 == 0 ? List.of("round", "flame") : List.of("round");
      all.add(new Appointment("B" + i, 60 * i, 60 * i + 45, needs, "1"));
    }
    return new Day(
        LocalTime.of(8, 0),
        540,
        20,
        45,
        15,
        1,
        4,
        List.of(new Stock("round", 9, List.of(1)), new Stock("flame", 9, List.of(1))),
        all,
        FixedFacts.NONE);
  }
}
