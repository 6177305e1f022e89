package kerfwright.planner.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kerfwright.quantity.FlowRate;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;
import org.junit.jupiter.api.Test;

class RootSurfaceTest {
  private static final FlowRate DRY = FlowRate.ofMillilitresPerMinute(0);
  private static final FlowRate WET = FlowRate.ofMillilitresPerMinute(25);

  private static Optional<Range<Length>> wall(double low, double typical, double high) {
    return Optional.of(
        new Range<>(
            Length.ofMillimetres(low), Length.ofMillimetres(typical), Length.ofMillimetres(high)));
  }

  private static RootHeat.Computed drilled(double powerW, FlowRate water) {
    return (RootHeat.Computed)
        RootSurface.of(
            wall(1, 1.5, 2),
            Bore.canal(1, 8),
            List.of(new CutHeat(20, 10, 2, powerW, 0, 0)),
            water,
            HeatInputs.TYPICAL);
  }

  @Test
  void whatIsNotKnownIsNotComputed() {
    List<CutHeat> cuts = List.of(new CutHeat(20, 10, 2, 1, 0, 0));
    assertEquals(
        new RootHeat.NotComputed(RootHeat.Reason.WALL_NOT_KNOWN),
        RootSurface.of(Optional.empty(), Bore.canal(1, 8), cuts, DRY, HeatInputs.TYPICAL));
    assertEquals(
        new RootHeat.NotComputed(RootHeat.Reason.NO_CUTS),
        RootSurface.of(wall(1, 1, 1), Bore.canal(1, 8), List.of(), DRY, HeatInputs.TYPICAL));
  }

  @Test
  void theLimitIsBoneAt47Degrees() {
    assertEquals(10, RootHeat.LIMIT_K, 1e-9);
  }

  @Test
  void aThinWallIsWarmerOutsideThanAThickOne() {
    RootHeat.Computed dry = drilled(1, DRY);
    assertTrue(dry.peakRiseK().low() < dry.peakRiseK().typical());
    assertTrue(dry.peakRiseK().typical() < dry.peakRiseK().high());
  }

  @Test
  void waterKeepsTheRootCoolerAndPowerWarmsIt() {
    assertTrue(drilled(1, WET).peakRiseK().typical() < drilled(1, DRY).peakRiseK().typical() - 1);
    // below 45 degC, where blood flows, all is linear
    double one = drilled(0.1, DRY).peakRiseK().typical();
    assertEquals(2 * one, drilled(0.2, DRY).peakRiseK().typical(), 1e-6 * one);
  }

  @Test
  void enoughPowerPassesTheLimitAndSaysForHowLong() {
    RootHeat.Computed hot = drilled(20, DRY);
    assertFalse(hot.holds());
    assertTrue(hot.secondsAboveLimit() > 5);
    assertTrue(drilled(0.05, DRY).holds());
    assertEquals(0, drilled(0.05, DRY).secondsAboveLimit());
  }

  @Test
  void inAChamberLittleOfTheHeatEnters() {
    List<CutHeat> cuts = List.of(new CutHeat(20, 10, 2, 0.2, 0, 0));
    Bore own = new Bore(1.5, 4, true);
    Bore open = Bore.chamber(Math.PI * 1.5 * 1.5, 4);
    double confined = peak(own, cuts);
    double share = HeatInputs.TYPICAL.heatShare() / HeatInputs.TYPICAL.confinedShare();
    assertEquals(confined * share, peak(open, cuts), 1e-6 * confined);
  }

  private static double peak(Bore bore, List<CutHeat> cuts) {
    RootHeat heat = RootSurface.of(wall(1, 1.5, 2), bore, cuts, DRY, HeatInputs.TYPICAL);
    return ((RootHeat.Computed) heat).peakRiseK().typical();
  }
}
