package kerfwright.catalogue.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LookupTest {
  @Test
  void aShapeIsFoundByCodeByNameAndByFamily() {
    assertEquals(ShapeFamily.TAPER_ROUND_END, Shapes.byCode("197").orElseThrow().family());
    assertEquals("248", Shapes.find("Flame, medium length").orElseThrow().code());
    assertEquals(
        ShapeFamily.TORPEDO_TAPERED, Shapes.byName("Torpedo-Tapered").orElseThrow().family());
    assertTrue(Shapes.byCode("999").isEmpty());
    assertTrue(Shapes.byName("no such").isEmpty());
    assertTrue(Shapes.suggestions("taper round").contains("taper round end"));
  }

  @Test
  void aNameSharedByAFamilyOrSeveralCodesGivesNoCode() {
    assertEquals("", Shapes.byName("pear").orElseThrow().code());
    assertEquals("", Shapes.byName("flame").orElseThrow().code());
    assertEquals("", Shapes.byName("taper, round end, short").orElseThrow().code());
    assertEquals(
        LengthClass.SHORT, Shapes.byName("taper, round end, short").orElseThrow().lengthClass());
  }

  @Test
  void everyShapeButRootCanalOnesHasAHeadLengthAndItsStanding() {
    for (InstrumentShape shape : Shapes.all()) {
      if (!shape.rootCanal()) {
        HeadLength length = Shapes.usualHeadLength(shape, Length.ofMillimetres(1.4));
        assertTrue(length.length().millimetres() > 0);
        assertEquals(shape.usualHeadLength() == null, length.assumed(), shape.code());
      }
    }
  }

  @ParameterizedTest
  @EnumSource(ShapeFamily.class)
  void everyFamilyHasAHeadLengthForEveryLengthClass(ShapeFamily family) {
    for (LengthClass each : LengthClass.values()) {
      HeadLength length = HeadLengthSettings.of(family, each, Length.ofMillimetres(1.4));
      assertEquals(Basis.PROJECT_SETTING, length.basis());
    }
  }

  /** 8 mm head of the instrument described in standards-s09. */
  @Test
  void theHeadLengthReadForShape197IsTakenAndNotCalledAssumed() {
    HeadLength length =
        Shapes.usualHeadLength(Shapes.byCode("197").orElseThrow(), Length.ofMillimetres(1.8));
    assertEquals(8.0, length.length().millimetres(), 1e-12);
    assertEquals(Basis.SEEN, length.basis());
  }

  @ParameterizedTest
  @EnumSource(GritClass.class)
  void theRowOfAGritClassAgreesWithTheClass(GritClass grit) {
    GritEntry entry = Grits.entry(grit);
    assertEquals(Optional.of(grit), Grits.byCode(grit.isoCode()));
    assertEquals(Optional.of(grit), Grits.byLabel(grit.label()));
    for (String ring : entry.rings()) {
      assertEquals(Optional.of(grit), Grits.byRing(ring));
      assertTrue(grit.ring().contains(ring));
    }
    if (entry.low() != null) {
      assertEquals(grit.particleSize().low(), entry.low());
      assertEquals(grit.particleSize().high(), entry.high());
    }
  }

  @Test
  void gritsFallFromCoarseToFineWithoutOverlap() {
    GritClass[] order = GritClass.values();
    for (int i = 1; i < order.length; i++) {
      assertTrue(order[i].particleSize().high().compareTo(order[i - 1].particleSize().low()) <= 0);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "314,FG,19.0,SEEN",
    "204,RA,22.0,SEEN",
    "104,HP,44.5,SEEN",
    "315,FG,21.0,FROM_MEMORY"
  })
  void aShankCodeTellsTypeAndLengthWithItsStanding(
      String code, ShankType type, double lengthMm, Basis basis) {
    Shank shank = Shanks.byCode(code).orElseThrow();
    assertEquals(type, shank.type());
    assertEquals(lengthMm, shank.overallLength().millimetres(), 1e-9);
    assertEquals(basis, shank.lengthBasis());
    assertEquals(type.diameter(), shank.diameter());
  }

  @Test
  void aThickShankIsNoneOfTheThreeTypes() {
    assertEquals(null, Shanks.byCode("123").orElseThrow().type());
  }

  @Test
  void materialGroupsTellTheKind() {
    assertEquals(InstrumentKind.DIAMOND, kind("806"));
    assertEquals(InstrumentKind.SINTERED_DIAMOND, kind("807"));
    assertEquals(InstrumentKind.CARBIDE, kind("500"));
    assertEquals(InstrumentKind.STEEL, kind("330"));
    assertEquals(InstrumentKind.POLISHER, kind("658"));
    assertTrue(WorkingParts.byGroup("999").isEmpty());
    assertTrue(WorkingParts.byGroup("506").orElseThrow().inWords().contains("titanium nitride"));
    assertEquals(Basis.FROM_MEMORY, WorkingParts.byGroup("658").orElseThrow().provenance().basis());
  }

  /** 6 blades to cut, 12 to 30 to finish: standards-s31. */
  @Test
  void bladeCountsFallIntoTheClassesRead() {
    assertTrue(BladeCounts.of(6).stream().anyMatch(c -> c.usualRole().contains("cavity cutting")));
    assertTrue(BladeCounts.of(30).stream().anyMatch(c -> c.usualRole().contains("finishing")));
    assertFalse(BladeCounts.of(6).stream().anyMatch(c -> c.usualRole().startsWith("finishing")));
    assertTrue(BladeCounts.of(25).size() == 1);
  }

  @Test
  void sizesReadInTenthsBothWays() {
    for (NominalSize size : NominalSizes.all()) {
      assertEquals(size, NominalSizes.nearest(size.diameter()));
      assertEquals(Optional.of(size), NominalSizes.byCode(size.code()));
    }
    assertEquals("006", NominalSizes.nearest(Length.ofMillimetres(0.63)).code());
    assertEquals("021", NominalSizes.nearest(Length.ofMillimetres(2.05)).code());
  }

  @Test
  void everyKindAndEveryFamilyIdReadsBack() {
    Set<InstrumentKind> kinds = EnumSet.noneOf(InstrumentKind.class);
    InstrumentKind.ids().forEach(id -> kinds.add(InstrumentKind.byId(id).orElseThrow()));
    assertEquals(EnumSet.allOf(InstrumentKind.class), kinds);
    for (ShapeFamily family : ShapeFamily.values()) {
      assertNotNull(Shapes.byName(family.label()).orElseThrow().family());
      assertEquals(family, Shapes.byName(family.id()).orElseThrow().family());
    }
  }

  private static InstrumentKind kind(String group) {
    return WorkingParts.byGroup(group).orElseThrow().kinds().get(0);
  }
}
