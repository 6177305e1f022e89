package kerfwright.catalogue.stack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;
import org.junit.jupiter.api.Test;

class UsualStacksTest {
  private static final UsualStacks STACKS = UsualStacks.packaged();
  private static final Tooth UPPER_MOLAR = new Tooth(16);

  @Test
  void aMetalCeramicMolarIsPorcelainMetalCementDentine() {
    UsualStack stack = stack(16, "metal-ceramic", "access-cavity");
    assertEquals(
        List.of("feldspathic-porcelain", "co-cr-alloy", "zinc-phosphate", "dentine"),
        stack.layers().stream().map(UsualLayer::materialId).toList());
    assertTrue(stack.complete());
    assertEquals(0.25, typicalMm(stack.layers().get(1)), 1e-9);
  }

  /** Deutsch and Musikant 2004: buccal cusp tip to chamber roof of maxillary molars 6.24 mm. */
  @Test
  void enamelAndDentineOfAMolarAddUpToTheMeasuredDepthOfTheRoof() {
    UsualStack stack = stack(16, null, "crown-preparation");
    double total = stack.layers().stream().mapToDouble(UsualStacksTest::typicalMm).sum();
    assertEquals(6.24, total, 1e-9);
    assertEquals(
        6.36,
        stack(36, null, "crown-preparation").layers().stream()
            .mapToDouble(UsualStacksTest::typicalMm)
            .sum(),
        1e-2);
  }

  @Test
  void fromTheFossaTheRoofIsNearer() {
    assertTrue(
        typicalMm(stack(16, null, "cavity-preparation").layers().get(1))
            < typicalMm(stack(16, null, "crown-preparation").layers().get(1)));
  }

  /** An access begins in the fossa: about 4.3 mm to the roof in molars, cusps of 2 mm. */
  @Test
  void anAccessIsCutFromTheFossaThroughACrownToo() {
    for (String restoration : new String[] {null, "metal-ceramic", "full-gold"}) {
      double depth =
          stack(16, restoration, "access-cavity").layers().stream()
              .mapToDouble(UsualStacksTest::typicalMm)
              .sum();
      assertEquals(4.3, depth, 0.1, restoration);
    }
  }

  @Test
  void decayAndWhatIsLeftAddUpToTheDentineOfTheTooth() {
    double whole = typicalMm(stack(36, null, "cavity-preparation").layers().get(1));
    double left = Double.MAX_VALUE;
    for (String depth : List.of("shallow", "moderate", "deep")) {
      List<UsualLayer> layers =
          STACKS
              .find(new Tooth(36), "carious", "cavity-preparation", null, depth)
              .orElseThrow()
              .layers();
      assertEquals(whole, typicalMm(layers.get(1)) + typicalMm(layers.get(2)), 1e-9, depth);
      assertTrue(typicalMm(layers.get(2)) < left, depth);
      left = typicalMm(layers.get(2));
    }
    assertEquals(whole / 6, left, 1e-2);
  }

  @Test
  void whatHasNoFigureStaysBlankAndSaysWhy() {
    UsualStack primary = stack(55, null, "access-cavity");
    assertFalse(primary.complete());
    Finding asked =
        primary.findings().stream()
            .filter(f -> f.code().equals("usual-layer-missing"))
            .findFirst()
            .orElseThrow();
    assertTrue(asked.message().keys().anyMatch(key -> key.equals("stack.none-for-primary")));
  }

  @Test
  void everyProcedureHasAUsualStackOnEveryToothItIsDoneOn() {
    for (String procedure : STACKS.procedures()) {
      UsualProcedure usual = STACKS.procedure(procedure);
      for (int fdi : new int[] {11, 13, 14, 16, 41, 43, 44, 46}) {
        Tooth tooth = new Tooth(fdi);
        if (usual.teeth().isEmpty() || usual.teeth().contains(tooth.toothClass().id())) {
          String what = procedure + " on " + fdi;
          UsualStack stack = STACKS.find(tooth, usual.restoration(), procedure, null).orElseThrow();
          assertTrue(stack.complete(), what);
          Materials all = Materials.packaged();
          assertTrue(
              usual.fits(stack.layers().stream().map(l -> all.get(l.materialId())).toList()), what);
        }
      }
    }
  }

  @Test
  void frontAndBackTeethDiffer() {
    assertEquals("facial", stack(11, "zirconia-3y", "crown-sectioning").place());
    assertEquals("occlusal", stack(16, "zirconia-3y", "crown-sectioning").place());
    assertTrue(
        typicalMm(stack(41, null, "enamel-bevel").layers().get(0))
            < typicalMm(stack(13, null, "enamel-bevel").layers().get(0)));
  }

  @Test
  void primaryTeethHaveNoFigures() {
    UsualStack stack = stack(55, null, "cavity-preparation");
    assertTrue(stack.layers().stream().allMatch(UsualLayer::missing));
    assertTrue(stack.label().contains("primary maxillary molar"));
  }

  @Test
  void ageWidensDentineButDoesNotMoveIt() {
    UsualLayer plain = stack(16, null, "access-cavity").layers().get(1);
    UsualStack old = STACKS.find(UPPER_MOLAR, null, "access-cavity", 70).orElseThrow();
    Range<Length> plainMm = Objects.requireNonNull(plain.thickness());
    Range<Length> oldMm = Objects.requireNonNull(old.layers().get(1).thickness());
    assertEquals(plainMm.typical(), oldMm.typical());
    assertEquals(plainMm.low().millimetres(), oldMm.low().millimetres(), 1e-9);
    assertEquals(plainMm.high().millimetres() + 0.195, oldMm.high().millimetres(), 1e-9);
    // CBCT of 87 patients: 11.582 - 0.142 x 70 = 1.6 mm2
    assertTrue(
        old.remarks().stream().anyMatch(f -> f.message().values().contains(new BigDecimal("1.6"))));
  }

  @Test
  void everyRestorationHasAStackForSomeProcedure() {
    for (String restoration : STACKS.restorations().keySet()) {
      assertTrue(
          STACKS.procedures().stream()
              .anyMatch(
                  p ->
                      STACKS.find(UPPER_MOLAR, restoration, p, null).isPresent()
                          || STACKS.find(new Tooth(11), restoration, p, null).isPresent()),
          restoration);
    }
  }

  @Test
  void everyProcedureHasAStackForSomeRestoration() {
    for (String procedure : STACKS.procedures()) {
      assertTrue(
          STACKS.restorations().keySet().stream()
              .anyMatch(r -> STACKS.find(UPPER_MOLAR, r, procedure, null).isPresent()),
          procedure);
    }
  }

  @Test
  void layersFromMemoryAreTold() {
    UsualStack bevel = stack(11, null, "enamel-bevel");
    assertTrue(bevel.layers().stream().allMatch(l -> l.basis() == Basis.FROM_MEMORY));
    assertTrue(bevel.findings().stream().anyMatch(f -> f.code().equals("usual-layer-from-memory")));
  }

  @Test
  void unknownIdsAreFaults() {
    assertThrows(
        IllegalArgumentException.class,
        () -> STACKS.find(UPPER_MOLAR, "wood", "access-cavity", null));
    assertThrows(
        IllegalArgumentException.class,
        () -> STACKS.find(UPPER_MOLAR, "carious", "cavity-preparation", null, "bottomless"));
    assertTrue(STACKS.find(UPPER_MOLAR, "post-fibre", "enamel-bevel", null).isEmpty());
  }

  private static UsualStack stack(int fdi, String restoration, String procedure) {
    return STACKS.find(new Tooth(fdi), restoration, procedure, null).orElseThrow();
  }

  private static double typicalMm(UsualLayer layer) {
    Range<Length> thickness = layer.thickness();
    assertNotNull(thickness, layer.materialId());
    return thickness.typical().millimetres();
  }
}
