package kerfwright.catalogue.number;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import kerfwright.catalogue.TestTable;
import kerfwright.quantity.Basis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Number vectors; each row names its sources (standards-s02 to standards-s22, or from memory). */
class IsoNumberVectorTest {
  static List<Map<String, String>> all() {
    return TestTable.rows("/kerfwright/catalogue/number/iso6360-vectors.csv");
  }

  static List<Map<String, String>> valid() {
    return all().stream().filter(row -> !row.get("valid").equals("no")).toList();
  }

  static List<Map<String, String>> invalid() {
    return all().stream().filter(row -> row.get("valid").equals("no")).toList();
  }

  @Test
  void allTwentyTwoVectorsAreThere() {
    assertEquals(22, all().size());
    assertEquals(3, invalid().size());
  }

  @ParameterizedTest
  @MethodSource("valid")
  void aValidVectorReadsAsItsRowSays(Map<String, String> row) {
    IsoNumber number = IsoNumber.parse(row.get("input"));
    String plain = row.get("input").replaceAll("\\D", "");
    assertEquals(plain, number.digits());
    assertEquals(number, IsoNumber.parse(number.encode()));
    NumberExplanation told = number.explain();
    assertEquals(Double.parseDouble(row.get("size_mm")), sizeMm(told), 1e-12);
    String meaning = row.get("meaning");
    compare(row.get("material"), number.material(), told, NumberGroup.Role.MATERIAL, meaning);
    compare(row.get("shank"), number.shank(), told, NumberGroup.Role.SHANK, meaning);
    compare(row.get("shape"), number.shape(), told, NumberGroup.Role.SHAPE, meaning);
    compare(
        row.get("characteristic"),
        number.characteristic(),
        told,
        NumberGroup.Role.CHARACTERISTIC,
        meaning);
  }

  @ParameterizedTest
  @MethodSource("invalid")
  void anInvalidVectorIsRefusedWithWhatWasExpected(Map<String, String> row) {
    MalformedNumberException fault =
        assertThrows(MalformedNumberException.class, () -> IsoNumber.parse(row.get("input")));
    assertTrue(fault.getMessage().contains(row.get("input")), fault.getMessage());
    if (row.get("meaning").startsWith("non-digit")) {
      assertEquals(15, fault.position());
      assertEquals("'A'", fault.found());
    } else {
      assertEquals(row.get("meaning").replaceAll(" digits.*", " digits"), fault.found());
      assertTrue(fault.expected().contains("15 digits"), fault.expected());
    }
  }

  @Test
  void whatIsFromMemoryIsCalledSoInTheVectorsAndInTheExplanation() {
    for (Map<String, String> row : valid()) {
      if (row.get("basis").equals("from-memory")) {
        assertTrue(
            IsoNumber.parse(row.get("input")).explain().groups().stream()
                .map(NumberGroup::provenance)
                .filter(Objects::nonNull)
                .anyMatch(provenance -> provenance.basis() == Basis.FROM_MEMORY),
            row.get("id"));
      }
    }
  }

  @Test
  void theUnknownShankOfVectorTwentyTwoStaysAsWritten() {
    NumberExplanation told = IsoNumber.parse("806 399 001 524 016").explain();
    List<NumberGroup> unknown = told.groups().stream().filter(group -> !group.known()).toList();
    NumberGroup shank = unknown.get(0);
    assertEquals("399", shank.digits());
    assertFalse(shank.known());
    assertNull(shank.provenance());
    assertTrue(shank.meaning().startsWith("unknown"), shank.meaning());
    assertNull(told.shank());
    assertNotNull(told.shankFamily());
    assertEquals(1, unknown.size());
  }

  /** Words of the row that must be found again in the explanation of the group. */
  private static void compare(
      String cell, String digits, NumberExplanation told, NumberGroup.Role role, String meaning) {
    if (cell.isEmpty()) {
      return;
    }
    assertEquals(cell.substring(0, 3), digits);
    NumberGroup group =
        told.groups().stream().filter(each -> each.role() == role).findFirst().orElseThrow();
    assertEquals(digits, group.digits());
    if (cell.contains("unknown")) {
      assertFalse(group.known());
      return;
    }
    assertTrue(group.known(), cell);
    String words = group.meaning();
    for (String word : List.of("round", "inverted cone", "pear", "flame", "cylinder", "bud")) {
      if (role == NumberGroup.Role.SHAPE && cell.contains(word)) {
        assertTrue(words.contains(word), words);
      }
    }
    for (String word :
        List.of("medium", "coarse", "fine", "cross-cut", "cross cut", "excavating")) {
      if (role == NumberGroup.Role.CHARACTERISTIC && cell.contains(word)) {
        assertTrue(words.contains(word), words);
      }
    }
    if (role == NumberGroup.Role.SHANK) {
      String family =
          meaning.contains("latch") || cell.contains("RA")
              ? "RA"
              : cell.contains("straight") || cell.contains("HP") ? "HP" : "FG";
      assertTrue(words.startsWith(family), words);
    }
    if (role == NumberGroup.Role.MATERIAL) {
      String word =
          digits.startsWith("8") ? "diamond" : digits.startsWith("5") ? "carbide" : "steel";
      assertTrue(words.contains(word), words);
    }
  }

  private static double sizeMm(NumberExplanation told) {
    return Objects.requireNonNull(told.size().length()).millimetres();
  }
}
