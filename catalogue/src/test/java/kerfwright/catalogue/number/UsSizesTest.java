package kerfwright.catalogue.number;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import kerfwright.catalogue.Confidence;
import kerfwright.catalogue.TestTable;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.NominalSizes;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class UsSizesTest {
  @ParameterizedTest
  @CsvSource({
    "330,330", "No. 330,330", "#330,330", "US 330,330", "33 1/2,33 1/2", "33\u00bd,33 1/2",
    "33-1/2,33 1/2", "\u00bd,1/2", "1/4,1/4", "170l,170L", "170 L,170L", "2,2"
  })
  void aSizeIsFoundInItsUsualSpellings(String typed, String number) {
    assertEquals(number, UsSizes.find(typed).orElseThrow().number());
  }

  @Test
  void anUnknownNumberIsNotGuessed() {
    assertTrue(UsSizes.find("331L").isEmpty());
    assertTrue(UsSizes.find("").isEmpty());
    assertTrue(UsSizes.suggestions("331L").contains("331"));
  }

  static List<UsSize> sizes() {
    return UsSizes.all();
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void everySizeFindsItselfAgainFromItsProperties(UsSize size) {
    List<UsMatch> matches = UsSizes.matching(bur(size, size.bladesLow()));
    assertTrue(
        matches.stream().anyMatch(match -> match.size().equals(size)), () -> size + " " + matches);
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void theNominalSizeIsTheNearestToTheDiameter(UsSize size) {
    assertEquals(NominalSizes.nearest(size.headDiameter()).code(), size.isoSize(), size.number());
  }

  /** Diameters read in JIS T 5201-1992, table 1 (standards-s11), each +/- 0.05 mm. */
  @ParameterizedTest
  @CsvSource({
    "1/2,0.63,006",
    "1,0.81,008",
    "2,0.99,010",
    "3,1.19,012",
    "4,1.39,014",
    "5,1.60,016",
    "6,1.82,018",
    "7,2.05,021",
    "8,2.28,023",
    "9,2.51,025"
  })
  void roundSizesFollowTheSteelBurTable(String number, double diameterMm, String isoSize) {
    UsSize size = UsSizes.find(number).orElseThrow();
    assertEquals(diameterMm, size.headDiameter().millimetres(), 1e-9);
    assertEquals(isoSize, size.isoSize());
    assertEquals(Basis.DERIVED, size.provenance().basis());
  }

  @Test
  void severalSizesAreAnsweredWhereSeveralFit() {
    List<UsMatch> matches = UsSizes.matching(bur("cylinder", 1.0, null, false));
    assertEquals(List.of("57"), numbers(matches));
    List<UsMatch> rounds = UsSizes.matching(bur("round", 1.4, null, false));
    assertEquals(List.of("4", "7004"), numbers(rounds));
    assertTrue(rounds.stream().noneMatch(match -> match.doubts().isEmpty()));
    assertEquals("7004", UsSizes.matching(bur("round", 1.4, 12, false)).get(0).size().number());
  }

  @Test
  void crossCutsTellTheSeriesApart() {
    assertEquals(List.of("557"), numbers(UsSizes.matching(bur("cylinder", 1.0, 6, true))));
    assertEquals(List.of("57"), numbers(UsSizes.matching(bur("cylinder", 1.0, 6, false))));
  }

  @Test
  void confidenceFallsWithEveryDoubt() {
    UsMatch match = UsSizes.matching(bur("cylinder", 1.0, 30, false)).get(0);
    assertEquals(Confidence.LOW, match.confidence());
    assertTrue(match.doubts().toString().contains("usually has 6 blades"), match.toString());
  }

  @Test
  void aDiamondHasNoUsSize() {
    UsSize size = UsSizes.find("2").orElseThrow();
    InstrumentProperties bur = bur(size, 6);
    InstrumentProperties diamond =
        new InstrumentProperties(
            InstrumentKind.DIAMOND,
            null,
            null,
            bur.shape(),
            bur.shapeName(),
            null,
            null,
            false,
            bur.headDiameter(),
            bur.headLength(),
            bur.shank(),
            bur.overallLength(),
            null,
            List.of());
    assertEquals(List.of(), UsSizes.matching(diamond));
  }

  /** The vectors that name a US number in their meaning (from memory) come out as candidates. */
  @Test
  void theNumbersOfTheVectorsAreAmongTheCandidates() {
    int checked = 0;
    for (Map<String, String> row :
        TestTable.rows("/kerfwright/catalogue/number/iso6360-vectors.csv")) {
      String meaning = row.get("meaning");
      int at = meaning.indexOf("US No. ");
      if (at < 0) {
        continue;
      }
      String us = meaning.substring(at + 7, meaning.indexOf(')', at));
      ShankType shank = meaning.contains("latch") ? ShankType.RA : ShankType.FG;
      List<String> candidates =
          UsSizes.isoCandidates(UsSizes.find(us).orElseThrow(), InstrumentKind.CARBIDE, shank)
              .stream()
              .map(candidate -> candidate.number().encode())
              .toList();
      assertTrue(candidates.contains(row.get("input")), us + " " + candidates);
      checked++;
    }
    assertEquals(4, checked);
  }

  @Test
  void anUnknownShapeCodeGivesNoNumberRatherThanAGuess() {
    UsSize pear = UsSizes.find("330").orElseThrow();
    assertEquals(List.of(), UsSizes.isoCandidates(pear, InstrumentKind.CARBIDE, ShankType.FG));
  }

  @Test
  void aChoiceOfToothingGivesSeveralNumbers() {
    UsSize fissure = UsSizes.find("57").orElseThrow();
    assertEquals(
        List.of("500 314 107 006 010", "500 314 107 001 010"),
        UsSizes.isoCandidates(fissure, InstrumentKind.CARBIDE, ShankType.FG).stream()
            .map(candidate -> candidate.number().encode())
            .toList());
  }

  private static List<String> numbers(List<UsMatch> matches) {
    return matches.stream().map(match -> match.size().number()).sorted().toList();
  }

  private static InstrumentProperties bur(UsSize size, Integer blades) {
    return new InstrumentProperties(
        InstrumentKind.CARBIDE,
        null,
        null,
        size.family(),
        size.shapeName(),
        null,
        blades,
        size.crossCut(),
        size.headDiameter(),
        size.headLength() == null ? Length.ofMillimetres(3) : size.headLength(),
        ShankType.FG,
        Length.ofMillimetres(19),
        null,
        List.of());
  }

  private static InstrumentProperties bur(
      String family, double diameterMm, Integer blades, boolean crossCut) {
    ShapeFamily shape =
        java.util.Arrays.stream(ShapeFamily.values())
            .filter(each -> each.id().equals(family))
            .findFirst()
            .orElseThrow();
    return new InstrumentProperties(
        InstrumentKind.CARBIDE,
        null,
        null,
        shape,
        family,
        null,
        blades,
        crossCut,
        Length.ofMillimetres(diameterMm),
        Length.ofMillimetres(3),
        ShankType.FG,
        Length.ofMillimetres(19),
        null,
        List.of());
  }
}
