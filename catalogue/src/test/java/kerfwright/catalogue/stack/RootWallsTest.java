package kerfwright.catalogue.stack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kerfwright.catalogue.tooth.Tooth;
import org.junit.jupiter.api.Test;

class RootWallsTest {
  @Test
  void molarsHaveTheWallThatWasMeasured() {
    assertEquals(
        3.05, RootWalls.chamber(new Tooth(16)).orElseThrow().typical().millimetres(), 1e-9);
    assertEquals(
        2.96, RootWalls.chamber(new Tooth(37)).orElseThrow().typical().millimetres(), 1e-9);
    assertEquals(0.79, RootWalls.canal(new Tooth(46)).orElseThrow().typical().millimetres(), 1e-9);
    assertTrue(RootWalls.canal(new Tooth(47)).orElseThrow().low().millimetres() > 0.5);
  }

  @Test
  void whatWasNotSeenStaysUnknown() {
    assertTrue(RootWalls.chamber(new Tooth(11)).isEmpty());
    assertTrue(RootWalls.canal(new Tooth(16)).isEmpty());
    assertTrue(RootWalls.canal(new Tooth(35)).isEmpty());
    assertTrue(RootWalls.chamber(new Tooth(75)).isEmpty());
  }
}
