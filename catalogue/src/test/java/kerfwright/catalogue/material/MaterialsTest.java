package kerfwright.catalogue.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import kerfwright.physics.material.Substance;
import kerfwright.quantity.Basis;
import org.junit.jupiter.api.Test;

class MaterialsTest {
  private static final Materials MATERIALS = Materials.packaged();

  @Test
  void everyMaterialAKeptCaseMayNameStaysThere() {
    List<String> gone =
        new ArrayList<>(
            List.of(
                ("enamel dentine carious-dentine cementum cortical-bone composite composite-aged"
                        + " adhesive-resin-aged glass-ionomer amalgam gold-alloy co-cr-alloy ni-cr-alloy"
                        + " pd-ag-alloy titanium feldspathic-porcelain leucite-glass-ceramic"
                        + " lithium-disilicate zirconia-3y zirconia-5y pmma peek resin-cement"
                        + " zinc-phosphate gutta-percha fibre-post steel-post")
                    .split(" ")));
    gone.removeAll(MATERIALS.ids());
    assertEquals(List.of(), gone);
  }

  @Test
  void theTestSubstrateIsNoCaseMaterial() {
    assertFalse(MATERIALS.isCaseMaterial("mica-glass-ceramic"));
    assertTrue(MATERIALS.find("mica-glass-ceramic").isPresent());
    assertTrue(MATERIALS.find("unobtainium").isEmpty());
  }

  @Test
  void valuesReachTheModelsInSi() {
    Substance enamel = MATERIALS.get("enamel").typical();
    assertEquals(3.5e9, enamel.hardnessPa());
    assertEquals(82e9, enamel.youngPa());
    assertEquals(0.88e6, enamel.toughnessPaSqrtM());
    assertEquals(2900, enamel.densityKgPerM3());
    assertEquals(0.81, enamel.conductivityWPerMK());
  }

  @Test
  void everyPropertyRisesFromLowToHigh() {
    for (Material material : MATERIALS.all()) {
      for (ModelInput input : MATERIALS.report(material.id()).orElseThrow().modelInputs()) {
        assertTrue(input.low() <= input.typical() && input.typical() <= input.high(), input.id());
      }
    }
  }

  @Test
  void waterSoftensCompositeAndAdhesive() {
    double fresh = MATERIALS.get("composite").typical().hardnessPa();
    assertTrue(MATERIALS.get("composite-aged").typical().hardnessPa() < fresh);
    assertTrue(MATERIALS.get("adhesive-resin-aged").typical().hardnessPa() < fresh);
    assertTrue(
        MATERIALS.get("adhesive-resin-aged").typical().hardnessPa()
            < MATERIALS.get("enamel").spread().low().hardnessPa());
  }

  @Test
  void aReportShowsBothWhatTheModelsTakeAndWhatIsPublished() {
    MaterialReport enamel = MATERIALS.report("enamel").orElseThrow();
    assertEquals(9, enamel.modelInputs().size());
    assertEquals(5, enamel.published(Property.YOUNG_MODULUS).size());
    assertTrue(enamel.published(Property.HARDNESS).get(0).preferred());
    assertEquals(Basis.FROM_MEMORY, input(enamel, Property.DENSITY).basis());
    assertEquals(Basis.SEEN, input(enamel, Property.HARDNESS).basis());
  }

  /**
   * A value said to be read must be the one its row holds; one said to be derived lies among them.
   */
  @Test
  void modelInputsAgreeWithTheRowsTheyAreTakenFrom() {
    for (Material material : MATERIALS.all()) {
      for (ModelInput input : MATERIALS.report(material.id()).orElseThrow().modelInputs()) {
        if (input.basis() == Basis.SEEN) {
          assertFalse(input.takenFrom().isEmpty(), input.id());
          assertTrue(
              input.takenFrom().stream()
                  .map(MaterialsTest::row)
                  .anyMatch(
                      r ->
                          r.basis() == Basis.SEEN
                              && Double.valueOf(input.typical()).equals(r.typical())),
              input.id());
        }
      }
    }
  }

  private static PropertyValue row(String id) {
    return MATERIALS.all().stream()
        .flatMap(m -> m.values().stream())
        .filter(v -> v.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static ModelInput input(MaterialReport report, Property property) {
    return report.modelInputs().stream()
        .filter(i -> i.property() == property)
        .findFirst()
        .orElseThrow();
  }
}
