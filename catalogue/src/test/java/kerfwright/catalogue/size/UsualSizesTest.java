package kerfwright.catalogue.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UsualSizesTest {
  private static final UsualSizes SIZES = UsualSizes.packaged();

  private static Place crown(int fdi) {
    return new Place(new Tooth(fdi), "crown-preparation", "crown-posterior-metal-ceramic");
  }

  private static double value(String name, Place place) {
    return SIZES.value(name, place, other -> value(other, place));
  }

  /** Table of section 6 of the trade's sizes: facial and occlusal area, neck, axial surface. */
  @ParameterizedTest
  @CsvSource({
    "16, 60, 82, 28, 150",
    "26, 60, 82, 28, 150",
    "17, 50, 74, 27, 130",
    "14, 49, 50, 21, 140",
    "35, 45, 42, 19, 115",
    "36, 66, 87, 28, 155",
    "47, 59, 79, 27, 135"
  })
  void aToothHasItsOwnSizes(int fdi, double facial, double occlusal, double neck, double axial) {
    assertEquals(facial, value("S_f", crown(fdi)), 1);
    assertEquals(occlusal, value("S_o", crown(fdi)), 1);
    assertEquals(neck, value("F", crown(fdi)), 1e-9);
    assertEquals(axial, value("S_axial", crown(fdi)), 1e-9);
  }

  @Test
  void theFacesOfACrownMakeUpItsAxialSurface() {
    for (int fdi : new int[] {11, 13, 14, 16, 17, 31, 33, 34, 36, 37}) {
      Place place = crown(fdi);
      double faces = value("S_f", place) + value("S_l", place) + 2 * value("S_p", place);
      assertEquals(value("S_axial", place), faces, 1e-9, "tooth " + fdi);
    }
  }

  @Test
  void theMostExactRowStands() {
    assertEquals(1.4, value("R_o", crown(16)), 1e-9);
    Place metal = new Place(new Tooth(16), "crown-preparation", "crown-posterior-metal");
    assertEquals(1.0, value("R_o", metal), 1e-9);
    assertEquals(2.0, value("cusp", crown(16)), 1e-9);
    assertEquals(0, value("cusp", crown(11)), 1e-9);
  }

  @Test
  void anOutlineGoesByToothAndAge() {
    Place young = new Place(new Tooth(46), "access-cavity", "", 25);
    Place old = new Place(new Tooth(46), "access-cavity", "", 70);
    Place untold = new Place(new Tooth(46), "access-cavity", "");
    assertEquals(Length.ofMillimetres(4.0), outline(young).length());
    assertEquals(Length.ofMillimetres(3.0), outline(old).length());
    assertEquals(Length.ofMillimetres(3.5), outline(untold).length());
    UsualOutline upper = outline(new Place(new Tooth(26), "access-cavity", ""));
    assertEquals(
        9.4, Math.PI / 4 * upper.length().millimetres() * upper.width().millimetres(), 0.05);
  }

  private static UsualOutline outline(Place place) {
    return SIZES.outline(place).orElseThrow();
  }

  @Test
  void whatMustBeLeftGoesByMaterialAndPlace() {
    Place back = new Place(new Tooth(16), "occlusal-adjustment", "adjust-zirconia");
    Place front = new Place(new Tooth(11), "occlusal-adjustment", "adjust-zirconia");
    assertEquals(0.5, least("zirconia-3y", back));
    assertEquals(0.3, least("zirconia-5y", front));
    assertEquals(1.0, least("lithium-disilicate", back));
    assertEquals(1.5, least("leucite-glass-ceramic", back));
    assertEquals(0.5, least("dentine", crown(16)));
  }

  private static double least(String material, Place place) {
    LeastThickness row = SIZES.least(Materials.packaged().get(material), place).orElseThrow();
    return row.least().orElseThrow().millimetres();
  }

  @Test
  void whatIsRecalledIsMarkedSo() {
    Size premolar = SIZES.find("h", crown(14)).orElseThrow();
    Size molar = SIZES.find("h", crown(16)).orElseThrow();
    assertEquals(Basis.SEEN, premolar.provenance().basis());
    assertEquals(Basis.FROM_MEMORY, molar.provenance().basis());
  }

  @Test
  void theReadmeExplainsEveryName() throws Exception {
    try (InputStream in =
        Objects.requireNonNull(
            UsualSizesTest.class.getResourceAsStream("/kerfwright/catalogue/size/README.md"))) {
      String readme = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      List<String> untold =
          SIZES.sizes().stream()
              .map(size -> "| `" + size.name() + "` | " + size.unit() + " |")
              .filter(line -> !readme.contains(line))
              .distinct()
              .toList();
      assertTrue(untold.isEmpty(), untold.toString());
    }
  }
}
