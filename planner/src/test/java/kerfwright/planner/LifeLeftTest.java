package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.material.Materials;
import kerfwright.physics.wear.GrainDulling;
import kerfwright.physics.wear.Sharpness;
import kerfwright.physics.wear.WearConstants;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.tool.Instrument;
import kerfwright.planner.tool.LifeLeft;
import org.junit.jupiter.api.Test;

class LifeLeftTest {
  private static final DrawerInstrument DIAMOND = AnInstrument.diamond(GritClass.COARSE);
  private static final DrawerInstrument CARBIDE = AnInstrument.carbide(6);

  private static Estimate left(DrawerInstrument one, Map<String, Double> cut) {
    return LifeLeft.of(one, cut).orElseThrow();
  }

  private static AnInstrument diamond() {
    return AnInstrument.any("D", InstrumentKind.DIAMOND, GritClass.COARSE, null);
  }

  @Test
  void aNewInstrumentHasAWholeLife() {
    assertEquals(Estimate.exactly(1), left(DIAMOND, Map.of()));
    assertEquals(Estimate.exactly(1), left(CARBIDE, Map.of()));
  }

  @Test
  void withoutVolumesEveryUseTakesTheSameShareAndTheSharpnessAgreesWithThePlanner() {
    DrawerInstrument used = diamond().worn(2).build();
    Estimate left = left(used, Map.of());
    assertEquals(1 - 2.0 / 5, left.typical(), 1e-12);
    assertEquals(1 - 2.0 / 10, left.high(), 1e-12);
    assertEquals(1 - 2.0 / 3, left.low(), 1e-12);
    double sharpness = Instrument.of(used).part().sharpness();
    // grit runs in to a plateau: what is left of its cut is no longer what is left of its life
    double lives = (1 - left.typical()) * Sharpness.LIFE_END;
    double grain = GritClass.COARSE.particleSize().typical().metres();
    assertEquals(GrainDulling.after(WearConstants.TYPICAL, grain, lives), sharpness, 1e-12);
  }

  @Test
  void whatThePlannerCallsWornOutHasNothingLeft() {
    DrawerInstrument dull = diamond().worn(6).build();
    assertTrue(Instrument.of(dull).wornOut());
    assertEquals(0, left(dull, Map.of()).typical());
  }

  @Test
  void sterilisingAloneTakesWhatTheTestsFound() {
    DrawerInstrument steamed =
        new DrawerInstrument("D", DIAMOND.properties(), 0, 5, DrawerInstrument.State.CLEAN);
    // 33.38 s new, 39.55 s after five cycles: Gonzaga CC et al. Indian J Dent Res 2019;30:915
    double expected = 1 - Math.log(39.55 / 33.38) / Math.log(3);
    assertEquals(expected, left(steamed, Map.of()).typical(), 1e-9);
  }

  @Test
  void harderWorkTakesMoreAndTheRangeStaysInOrder() {
    double before = 2;
    for (String material : new String[] {"composite", "enamel", "zirconia-3y"}) {
      Estimate left = left(DIAMOND, Map.of(material, 10.0));
      assertTrue(left.typical() < before, material);
      assertTrue(left.low() <= left.typical() && left.typical() <= left.high(), material);
      before = left.typical();
    }
  }

  @Test
  void moreVolumeNeverLeavesMore() {
    for (var material : Materials.packaged().all()) {
      double last = 1;
      for (double mm3 = 0.5; mm3 < 2000; mm3 *= 2) {
        double now = left(CARBIDE, Map.of(material.id(), mm3)).typical();
        assertTrue(now <= last && now >= 0, material.id());
        last = now;
      }
    }
  }
}
