package kerfwright.catalogue.stack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AnatomyLiteratureTest {
  private static final Anatomy ANATOMY = Anatomy.packaged();

  /**
   * Deutsch AS, Musikant BL. J Endod 2004;30:388-390 and Velmurugan N and others. Indian J Dent Res
   * 2008;19:92-94 print all distances along one line, so they must add up. The tolerance is the
   * rounding of three means read to 0.5 mm on radiographs of 100 teeth (0.05).
   */
  @ParameterizedTest
  @CsvSource({"m-upper", "m-lower", "m1-upper"})
  void distancesAlongTheAxisOfAMolarAddUp(String tooth) {
    double cuspToFurcation = mean("cusp-to-furcation-" + tooth + "-1");
    double roofToFurcation = mean("chamber-roof-to-furcation-" + tooth + "-1");
    double floorToFurcation = mean("chamber-floor-to-furcation-" + tooth + "-1");
    assertEquals(
        cuspToFurcation - roofToFurcation, mean("cusp-to-chamber-roof-" + tooth + "-1"), 0.05);
    assertEquals(
        cuspToFurcation - floorToFurcation, mean("cusp-to-chamber-floor-" + tooth + "-1"), 0.05);
    assertEquals(roofToFurcation - floorToFurcation, mean("chamber-height-" + tooth + "-1"), 0.05);
  }

  /**
   * The age lines of the CBCT study (maxillary 11.582 - 0.142 age, mandibular 14.249 - 0.163 age)
   * pass its age-group means within one standard deviation at the middle of each group.
   */
  @ParameterizedTest
  @CsvSource({
    "upper-1, 19.5, 11.582, 0.142",
    "upper-2, 46.5, 11.582, 0.142",
    "upper-3, 67, 11.582, 0.142",
    "lower-1, 19.5, 14.249, 0.163",
    "lower-2, 46.5, 14.249, 0.163",
    "lower-3, 67, 14.249, 0.163"
  })
  void ageLinesPassTheGroupMeans(String group, double ageYears, double at0, double perYear) {
    AnatomyRow row = ANATOMY.tooth("chamber-area-m1-" + group).orElseThrow();
    assertEquals(
        Objects.requireNonNull(row.numbers().typical()),
        at0 - perYear * ageYears,
        Objects.requireNonNull(row.sd()));
  }

  @Test
  void whatWasNotFoundIsBlank() {
    for (AnatomyRow row : ANATOMY.teeth()) {
      if (row.quantity().equals("cervical-dentine-wall")) {
        assertEquals(null, row.numbers().typical(), row.id());
        assertTrue(row.note().startsWith("not found"), row.id());
      }
    }
    assertEquals(null, ANATOMY.restoration("layer-thickness-24").orElseThrow().numbers().typical());
  }

  private static double mean(String id) {
    return Objects.requireNonNull(ANATOMY.tooth(id).orElseThrow().numbers().typical());
  }
}
