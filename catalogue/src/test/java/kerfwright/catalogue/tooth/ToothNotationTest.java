package kerfwright.catalogue.tooth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kerfwright.catalogue.TestTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ToothNotationTest {
  /** 52 rows read in standards-s34 to standards-s39, see the file. */
  static List<Map<String, String>> rows() {
    return TestTable.rows("/kerfwright/catalogue/tooth/tooth-notation.csv");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void everyToothReadsAndWritesAsInTheTables(Map<String, String> row) {
    Tooth tooth = new Tooth(Integer.parseInt(row.get("fdi")));
    assertEquals(tooth, ToothNotation.parse(row.get("fdi"), ToothSystem.FDI));
    assertEquals(tooth, ToothNotation.parse(row.get("universal"), ToothSystem.UNIVERSAL));
    assertEquals(tooth, ToothNotation.parse(row.get("palmer"), ToothSystem.PALMER));
    assertEquals(tooth, ToothNotation.parse(row.get("palmer_sign"), ToothSystem.PALMER));
    assertEquals(row.get("universal"), ToothNotation.write(tooth, ToothSystem.UNIVERSAL));
    assertEquals(row.get("palmer"), ToothNotation.write(tooth, ToothSystem.PALMER));
    assertEquals(row.get("palmer_sign"), ToothNotation.palmerSign(tooth));
    assertEquals(row.get("name"), ToothNotation.name(tooth));
    assertEquals(row.get("dentition").equals("primary"), tooth.primary());
  }

  @Test
  void theTablesHoldEveryToothOnce() {
    List<Integer> listed = rows().stream().map(row -> Integer.parseInt(row.get("fdi"))).toList();
    assertEquals(ToothNotation.all().stream().map(Tooth::fdi).toList(), listed);
  }

  @ParameterizedTest
  @EnumSource(ToothSystem.class)
  void everySystemNamesEveryToothDifferently(ToothSystem system) {
    Set<String> names = new HashSet<>();
    for (Tooth tooth : ToothNotation.all()) {
      assertTrue(names.add(ToothNotation.write(tooth, system)));
      assertEquals(tooth, ToothNotation.parse(ToothNotation.write(tooth, system), system));
    }
  }

  @Test
  void elevenIsAmbiguousAndBothMeaningsAreNamed() {
    ToothReading reading = ToothNotation.parse("11");
    assertTrue(reading.ambiguous());
    assertEquals(
        List.of(
            new ToothReading.Meaning(ToothSystem.FDI, new Tooth(11)),
            new ToothReading.Meaning(ToothSystem.UNIVERSAL, new Tooth(23))),
        reading.meanings());
    String words = assertThrows(IllegalStateException.class, reading::only).getMessage();
    assertTrue(words.contains("permanent upper right central incisor (FDI 11)"), words);
    assertTrue(words.contains("permanent upper left canine (FDI 23)"), words);
  }

  /** The ambiguous texts are those the rule of the notations gives (standards.md, section 7). */
  @Test
  void justElevenToEighteenTwentyOneToEightAndThirtyOneAndTwoAreAmbiguous() {
    List<Integer> ambiguous = new ArrayList<>();
    for (int n = 1; n <= 99; n++) {
      try {
        if (ToothNotation.parse(String.valueOf(n)).ambiguous()) {
          ambiguous.add(n);
        }
      } catch (IllegalArgumentException notATooth) {
        // not this test's matter
      }
    }
    assertEquals(
        List.of(11, 12, 13, 14, 15, 16, 17, 18, 21, 22, 23, 24, 25, 26, 27, 28, 31, 32), ambiguous);
  }

  @Test
  void whatOnlyOneSystemKnowsIsPlain() {
    assertEquals(new Tooth(46), ToothNotation.parse("46").only());
    assertEquals(new Tooth(17), ToothNotation.parse("2").only());
    assertEquals(new Tooth(55), ToothNotation.parse("a").only());
    assertEquals(new Tooth(16), ToothNotation.parse("ur6").only());
    assertEquals(new Tooth(16), ToothNotation.parse("UR 6").only());
    assertEquals(new Tooth(16), ToothNotation.parse("1.6").only());
    assertFalse(ToothNotation.parse("6\u2518").ambiguous());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "0", "19.", "49", "56", "UR9", "URF", "XX1", "U", "99", "1-6", "\u0661\u0661"})
  void whatIsNoToothIsRefusedWithWhatWasExpected(String text) {
    String words =
        assertThrows(IllegalArgumentException.class, () -> ToothNotation.parse(text)).getMessage();
    assertTrue(words.contains("expected FDI 11 to 18"), words);
  }

  @Test
  void anUnknownToothInOneSystemSaysWhatThatSystemHas() {
    String words =
        assertThrows(
                IllegalArgumentException.class,
                () -> ToothNotation.parse("33", ToothSystem.UNIVERSAL))
            .getMessage();
    assertEquals("'33' is no tooth in Universal; expected 1 to 32, primary A to T", words);
  }

  @Test
  void archSideAndClassFollowTheName() {
    for (Tooth tooth : ToothNotation.all()) {
      String name = ToothNotation.name(tooth);
      assertEquals(name.contains("upper"), tooth.upper());
      assertEquals(name.contains("right"), tooth.right());
      assertTrue(name.endsWith(tooth.toothClass().id()));
    }
    assertEquals(ToothClass.MOLAR, new Tooth(74).toothClass());
    assertEquals(ToothClass.PREMOLAR, new Tooth(34).toothClass());
  }
}
