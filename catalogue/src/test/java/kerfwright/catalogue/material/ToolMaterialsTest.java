package kerfwright.catalogue.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
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
    assertTrue(TOOLS.cementedCarbide().strengthMayFeedSafetyLimit());
    assertFalse(TOOLS.toolSteel().strengthMayFeedSafetyLimit());
    assertFalse(TOOLS.shankSteel().strengthMayFeedSafetyLimit());
    assertFalse(TOOLS.polymer().strengthMayFeedSafetyLimit());
    assertFalse(TOOLS.diamond().strengthMayFeedSafetyLimit());
    assertEquals(
        1620, Objects.requireNonNull(TOOLS.cementedCarbide().strength()).low().megapascals(), 1e-9);
  }
}
