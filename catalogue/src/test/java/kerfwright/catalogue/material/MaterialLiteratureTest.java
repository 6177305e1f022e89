package kerfwright.catalogue.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.stream.Stream;
import kerfwright.physics.material.Substance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class MaterialLiteratureTest {
  private static final Materials MATERIALS = Materials.packaged();

  /**
   * Park S, Quinn JB, Romberg E, Arola D. Dent Mater 2008;24:1477-1485, table 1: H, E, K_c and the
   * brittleness the authors print. The tolerance of 3 % covers the rounding of the printed inputs
   * (K_c to two digits enters squared).
   */
  @ParameterizedTest
  @CsvFileSource(resources = "brittleness.csv", numLinesToSkip = 1)
  void brittlenessIsWhatTheAuthorsPrint(
      String material, double hardnessGpa, double youngGpa, double toughness, double printedPerUm) {
    double perUm = substance(hardnessGpa, youngGpa, toughness).brittlenessPerM() * 1e-6;
    assertEquals(printedPerUm, perUm, 0.03 * printedPerUm, material);
  }

  /**
   * Critical depth 0.15 (E/H)(K_c/H)^2, Bifano TG, Dow TA, Scattergood RO. J Eng Ind
   * 1991;113:184-189 (the constant from memory), with E, H, K_c of Park 2008 table 1 and Zhang Y,
   * Kelly JR. Dent Clin North Am 2017;61:797-819 table 1. The depths were worked out independently;
   * the tolerance is half of the last digit printed. Dentine is printed as "120, outside the
   * model".
   */
  @ParameterizedTest
  @CsvFileSource(resources = "critical-depth.csv", numLinesToSkip = 1)
  void criticalDepthIsTheOneWorkedOutFromPublishedValues(
      String material, double hardnessGpa, double youngGpa, double toughness, String printedUm) {
    double um = substance(hardnessGpa, youngGpa, toughness).criticalDepthM() * 1e6;
    BigDecimal printed = new BigDecimal(printedUm);
    assertEquals(printed.doubleValue(), um, printed.ulp().doubleValue() / 2, material);
  }

  /**
   * Lin M and others, Infrared Phys Technol 2010, abstract: enamel 0.81 W/mK and 4.08e-7 m2/s,
   * dentine 0.48 and 2.01e-7. Their quotient is the heat a volume holds: 1.985e6 and 2.388e6 J/(m3
   * K), to four digits.
   */
  @Test
  void conductivityOverDiffusivityIsTheVolumetricHeat() {
    assertEquals(
        1.985e6, typical("enamel", "enamel-cond-1") / typical("enamel", "enamel-diff-1"), 500);
    assertEquals(
        2.388e6, typical("dentine", "dentine-cond-1") / typical("dentine", "dentine-diff-1"), 500);
  }

  /** What the models take must keep the measured diffusivity (same abstract), within its spread. */
  @Test
  void modelInputsKeepTheMeasuredDiffusivity() {
    assertEquals(4.08e-7, MATERIALS.get("enamel").typical().diffusivityM2PerS(), 0.178e-7);
    assertEquals(2.01e-7, MATERIALS.get("dentine").typical().diffusivityM2PerS(), 0.050e-7);
  }

  /**
   * University teaching text on odontology, chapter 8, table 5: 2.2e-3 and 1.5e-3 cal/(cm s degC).
   * One thermochemical calorie is 4.184 J, so the factor is 418.4; to two digits.
   */
  @Test
  void caloriesOfTheTeachingTableAreConvertedRightly() {
    assertEquals(2.2e-3 * 418.4, typical("enamel", "enamel-cond-2"), 0.005);
    assertEquals(1.5e-3 * 418.4, typical("dentine", "dentine-cond-2"), 0.005);
  }

  /**
   * Ranges the catalogue prints for enamel and the test substrate are those of Park 2008 table 1:
   * the brittleness of the preferred typical H, E and K_c is the printed typical one.
   */
  @Test
  void preferredValuesOfEnamelGiveThePrintedBrittleness() {
    double perUm = MATERIALS.get("enamel").typical().brittlenessPerM() * 1e-6;
    assertEquals(375, perUm, 0.03 * 375);
  }

  /** Yin 2003 and common practice: porcelain breaks, metal yields; the order must come out. */
  @Test
  void ceramicsAndEnamelAreFarMoreBrittleThanMetalsAndDentine() {
    double leastBrittleCeramic =
        Stream.of("enamel", "feldspathic-porcelain", "leucite-glass-ceramic", "lithium-disilicate")
            .mapToDouble(id -> MATERIALS.get(id).typical().brittlenessPerM())
            .min()
            .orElseThrow();
    for (String ductile : new String[] {"dentine", "gold-alloy", "co-cr-alloy", "titanium"}) {
      assertTrue(
          MATERIALS.get(ductile).typical().brittlenessPerM() < leastBrittleCeramic / 10, ductile);
    }
  }

  private static double typical(String material, String rowId) {
    return Objects.requireNonNull(
        MATERIALS.get(material).values().stream()
            .filter(v -> v.id().equals(rowId))
            .findFirst()
            .orElseThrow()
            .typical());
  }

  private static Substance substance(double hardnessGpa, double youngGpa, double toughness) {
    double hardnessPa = hardnessGpa * 1e9;
    return new Substance(hardnessPa, youngGpa * 1e9, toughness * 1e6, 1000, 1, 1000, hardnessPa, 1);
  }
}
