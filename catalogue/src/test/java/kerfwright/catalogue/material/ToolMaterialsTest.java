package kerfwright.catalogue.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import kerfwright.quantity.Basis;
import org.junit.jupiter.api.Test;

class ToolMaterialsTest {
  private static final ToolMaterials TOOLS = ToolMaterials.packaged();

  @Test
  void instrumentsAreMadeOfTheseMaterials() {
    assertTrue(
        TOOLS
            .ids()
            .containsAll(
                List.of(
                    "diamond",
                    "cemented-carbide",
                    "tool-steel",
                    "shank-steel",
                    "ceramic",
                    "polymer")));
  }

  @Test
  void thePolymerStandsBetweenCariousAndSoundDentine() {
    double polymer = TOOLS.polymer().hardness().typical().pascals();
    Materials materials = Materials.packaged();
    assertTrue(polymer > materials.get("carious-dentine").typical().hardnessPa());
    assertTrue(polymer < materials.get("dentine").typical().hardnessPa());
    assertTrue(
        TOOLS.polymer().hardness().high().pascals()
            < materials.get("enamel").spread().low().hardnessPa());
  }

  @Test
  void onlyTheStrengthOfCarbideIsReadInItsSource() {
    List<String> read =
        TOOLS.ids().stream()
            .filter(id -> TOOLS.get(id).inputs().stream().anyMatch(ToolMaterialsTest::isRead))
            .toList();
    assertEquals(List.of("cemented-carbide"), read);
    assertEquals(
        1620, Objects.requireNonNull(TOOLS.cementedCarbide().strength()).low().megapascals(), 1e-9);
  }

  private static boolean isRead(ModelInput input) {
    return input.property() == Property.FLEXURAL_STRENGTH
        && input.basis() != Basis.PROJECT_SETTING
        && input.basis().mayFeedSafetyLimit();
  }
}
