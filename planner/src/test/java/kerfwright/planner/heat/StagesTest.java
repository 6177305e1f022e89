package kerfwright.planner.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class StagesTest {
  private static Stages of(double firstS, double changeS, double secondS) {
    return Stages.of(
        List.of(
            new CutHeat(firstS, firstS + 1, 1, 2, 0.5, 0),
            new CutHeat(secondS, secondS + 1, 1, 2, 0.5, changeS)));
  }

  @Test
  void aSlowerRunIsAtTheSameStageLater() {
    Stages planned = of(10, 5, 20);
    Stages slower = of(30, 5, 25);
    assertEquals(15, planned.mapS(5, slower), 1e-12);
    assertEquals(30, planned.mapS(10, slower), 1e-12);
    assertEquals(30 + 15 * 30 / 25.0, planned.mapS(25, slower), 1e-12);
    assertEquals(60, slower.endS(), 1e-12);
  }

  @Test
  void afterTheCutBothGoOnAlike() {
    assertEquals(60 + 12, of(10, 5, 20).mapS(35 + 12, of(30, 5, 25)), 1e-12);
  }

  @Test
  void pausesBelongToTheirStep() {
    Stages stages = Stages.of(List.of(new CutHeat(9, 2, 1.5, 2, 0.5, 3)));
    assertEquals(3 + 9 + 4 * 1.5, stages.endS(), 1e-12);
  }

  @Test
  void whatLiesBetweenTwoOutputsIsFound() {
    WallHistory history =
        new WallHistory(new double[] {1, 2, 3, 4}, new double[] {0, 5, -2, 1}, 36);
    assertEquals(5, history.highestK(1.5, 3.5), 0);
    assertEquals(-2, history.lowestK(1.5, 3.5), 0);
    assertEquals(1, history.highestK(3.5, 9), 0);
  }
}
