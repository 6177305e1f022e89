package kerfwright.catalogue.number;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import kerfwright.catalogue.Remark;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.InstrumentShape;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InstrumentResolverTest {
  @Test
  void aDiamondIsReadFromItsNumber() {
    InstrumentProperties read =
        resolved("iso", "806 314 197 534 014", "head_length_mm", "8.0", "max_rpm", "450000");
    assertEquals(InstrumentKind.DIAMOND, read.kind());
    assertEquals("806 314 197 534 014", read.iso());
    assertEquals(ShapeFamily.TAPER_ROUND_END, read.shape());
    assertEquals(GritClass.COARSE, read.grit());
    assertNull(read.blades());
    assertEquals(1.4, read.headDiameter().millimetres(), 1e-12);
    assertEquals(8.0, read.headLength().millimetres(), 1e-12);
    assertEquals(ShankType.FG, read.shank());
    assertEquals(19, read.overallLength().millimetres(), 1e-12);
    assertEquals(450_000, read.maximumSpeed().rpm(), 1e-6);
    assertEquals(List.of(), words(read));
  }

  @Test
  void aBurIsReadFromItsUsSizeAndWhatIsFromMemoryIsSaid() {
    InstrumentProperties read =
        resolved(
            "kind",
            "carbide",
            "us",
            "330",
            "blades",
            "6",
            "shank",
            "FG",
            "overall_mm",
            "19",
            "max_rpm",
            "400000");
    assertEquals("330", read.us());
    assertEquals(ShapeFamily.PEAR, read.shape());
    assertEquals(6, read.blades());
    assertEquals(0.8, read.headDiameter().millimetres(), 1e-12);
    assertEquals(1.0, read.headLength().millimetres(), 1e-12);
    assertTrue(words(read).contains("head-from-us 0.80, 330, FROM_MEMORY"), words(read).toString());
    assertTrue(
        words(read).contains("head-length-from-us 1.00, 330, FROM_MEMORY"), words(read).toString());
  }

  @Test
  void theGreatestSpeedIsNeverGuessed() {
    assertNull(resolved("iso", "806 314 001 524 016").maximumSpeed());
  }

  @Test
  void anAssumedHeadLengthIsListedAsAProjectSetting() {
    InstrumentProperties read = resolved("iso", "806 314 001 524 016");
    assertEquals(List.of("head-length-usual 1.44, 001, PROJECT_SETTING"), words(read));
  }

  @Test
  void bladesFollowTheToothingOfTheNumber() {
    InstrumentProperties read = resolved("iso", "500 314 107 007 010");
    assertEquals(6, read.blades());
    assertTrue(read.crossCut());
    assertTrue(
        words(read).stream().anyMatch(text -> text.startsWith("blades-usual-number 6, 007")),
        words(read).toString());
  }

  @ParameterizedTest
  @CsvSource({
    "coarse,COARSE",
    "534,COARSE",
    "green,COARSE",
    "Extra Fine,EXTRA_FINE",
    "extra-fine,EXTRA_FINE",
    "yellow,EXTRA_FINE",
    "none,MEDIUM",
    "blue,MEDIUM",
    "super_fine,SUPER_FINE"
  })
  void gritIsReadByClassCodeOrRing(String word, GritClass grit) {
    InstrumentProperties read =
        resolved(
            "kind", "diamond", "shape", "round", "head_mm", "1.6", "shank", "FG", "grit", word);
    assertEquals(grit, read.grit());
  }

  @ParameterizedTest
  @CsvSource({
    "shank,   806 314 001 524 016, shank,   RA",
    "kind,    806 314 001 524 016, kind,    carbide",
    "kind,    500 314 001 001 010, kind,    diamond",
    "kind,    500 314 001 001 010, kind,    steel",
    "grit,    500 314 001 001 010, grit,    coarse",
    "blades,  806 314 001 524 016, blades,  6",
    "grit,    806 314 001 524 016, grit,    fine",
    "head_mm, 806 314 001 524 016, head_mm, 1.2",
    "shape,   806 314 001 524 016, shape,   pear",
    "shape,   806 314 001 524 016, shape,   002",
    "us,      500 314 001 001 010, us,      557",
    "us,      806 314 001 524 016, us,      2",
    "overall_mm, 806 314 001 524 016, overall_mm, 25",
    "us,      500 314 001 001 010, us,      4"
  })
  void aContradictionBetweenNumberAndColumnIsAFault(
      String faulty, String iso, String column, String value) {
    List<FieldFault> faults = faults("iso", iso, column, value);
    assertEquals(List.of(faulty), faults.stream().map(FieldFault::field).distinct().toList());
  }

  @ParameterizedTest
  @CsvSource({
    "kind,diamnd,diamond",
    "kind,sintered diamond,sintered-diamond",
    "us,331L,331",
    "shape,cilinder,cylinder",
    "shape,torpedo taper,torpedo tapered"
  })
  void aWrongWordIsAnsweredWithTheNearestValidOne(String column, String typed, String nearest) {
    FieldFault fault =
        faults("kind", "carbide", "shank", "FG", "head_mm", "1.0", "shape", "round", column, typed)
            .stream()
            .filter(each -> each.field().equals(column))
            .findFirst()
            .orElseThrow();
    assertTrue(fault.nearest().contains(nearest), fault.toString());
    assertEquals(typed, fault.found());
  }

  @ParameterizedTest
  @CsvSource({
    "head_mm,-1", "head_mm,0", "head_mm,1e9", "head_mm,NaN", "head_mm,'1,2'", "head_mm,abc",
    "blades,1", "blades,6.5", "blades,-4", "max_rpm,0", "max_rpm,99999999", "max_rpm,fast",
    "overall_mm,2", "head_length_mm,19", "head_length_mm,500"
  })
  void anAbsurdFigureIsRefusedWithItsLimits(String column, String value) {
    List<FieldFault> faults =
        faults("kind", "carbide", "shape", "round", "shank", "FG", "head_mm", "1.0", column, value);
    assertEquals(List.of(column), faults.stream().map(FieldFault::field).toList());
    assertEquals(value, faults.get(0).found());
  }

  @Test
  void everyFaultOfARowIsListedAtOnce() {
    List<String> fields =
        faults("kind", "dimond", "iso", "806 314", "shank", "XX", "max_rpm", "many").stream()
            .map(FieldFault::field)
            .toList();
    assertEquals(List.of("iso", "kind", "shank", "max_rpm"), fields);
  }

  @Test
  void anEmptyRowSaysWhatIsNeeded() {
    assertEquals(
        List.of("kind", "shape", "head_mm", "shank"),
        faults().stream().map(FieldFault::field).toList());
  }

  @Test
  void aRootCanalInstrumentIsRefusedAndNotMisread() {
    List<FieldFault> faults = faults("iso", "330 204 680 002 090", "kind", "steel");
    assertEquals("number-not-root-canal", faults.get(0).expected().code());
    List<FieldFault> undecided = faults("iso", "330 204 654 452 025", "kind", "steel");
    assertTrue(undecided.stream().anyMatch(fault -> fault.field().equals("head_mm")));
  }

  @Test
  void anUnknownShapeIsFilledFromTheColumn() {
    InstrumentProperties read = resolved("iso", "806 314 999 524 016", "shape", "taper round end");
    assertEquals(ShapeFamily.TAPER_ROUND_END, read.shape());
    FieldFault needed = faults("iso", "806 314 999 524 016").get(0);
    assertEquals(Remark.of("shape-unknown", "999"), needed.expected());
  }

  @Test
  void anOverallLengthFromMemoryMustBeMeasured() {
    FieldFault fault = faults("iso", "806 315 001 524 016").get(0);
    assertEquals("overall_mm", fault.field());
    assertEquals(Remark.of("overall-measured", "315", Length.ofMillimetres(21)), fault.expected());
    assertEquals(
        21.5,
        resolved("iso", "806 315 001 524 016", "overall_mm", "21.5").overallLength().millimetres(),
        1e-9);
  }

  @Test
  void anUnknownLengthCodeStillTellsTheTypeButNotTheLength() {
    FieldFault fault = faults("iso", "806 399 001 524 016").get(0);
    assertEquals("overall_mm", fault.field());
    assertEquals(ShankType.FG, resolved("iso", "806 399 001 524 016", "overall_mm", "19").shank());
  }

  @Test
  void theShortFormNeedsKindAndShank() {
    InstrumentProperties read = resolved("iso", "001 524 016", "kind", "diamond", "shank", "RA");
    assertEquals(22, read.overallLength().millimetres(), 1e-9);
    assertTrue(words(read).contains("overall-standard 22.00, RA"));
    List<String> fields = faults("iso", "001 524 016").stream().map(FieldFault::field).toList();
    assertEquals(List.of("kind", "shank"), fields);
  }

  @Test
  void aShortFormWhoseCharacteristicDoesNotFitTheKindIsAFault() {
    List<FieldFault> faults = faults("iso", "001 524 016", "kind", "carbide", "shank", "FG");
    assertEquals(List.of("kind"), faults.stream().map(FieldFault::field).toList());
  }

  @Test
  void anyMixtureOfWordsEndsInAnInstrumentOrInFaultsNeverInAnException() {
    SplittableRandom random = new SplittableRandom(3);
    Map<String, List<String>> words = new HashMap<>();
    words.put("kind", List.of("", "diamond", "carbide", "steel", "polisher", "disc", "stone", "x"));
    words.put(
        "iso",
        List.of(
            "",
            "806 314 197 534 014",
            "500 204 001 071 014",
            "658 104 030 523 060",
            "330 204 680 002 090",
            "330 204 654 452 025",
            "001 524 016",
            "900 900 001 001 001",
            "806 123 001 524 000",
            "12",
            "804 314 001 999 016",
            "609 314 001 001 016"));
    words.put("us", List.of("", "330", "7404", "33 1/2", "245", "nine"));
    words.put("shape", List.of("", "001", "flame", "disc", "197", "680", "no such"));
    words.put("grit", List.of("", "fine", "red", "534", "pink"));
    words.put("blades", List.of("", "6", "30", "-1"));
    words.put("head_mm", List.of("", "1.4", "0", "22"));
    words.put("head_length_mm", List.of("", "4", "90"));
    words.put("shank", List.of("", "FG", "ra", "HP", "latch", "?"));
    words.put("overall_mm", List.of("", "19", "44.5", "a"));
    words.put("max_rpm", List.of("", "300000"));
    int instruments = 0;
    for (int n = 0; n < 30_000; n++) {
      Map<String, String> row = new HashMap<>();
      words.forEach(
          (column, list) ->
              row.put(column, random.nextInt(10) < 6 ? "" : list.get(random.nextInt(list.size()))));
      Resolution resolution = InstrumentResolver.resolve(new DrawerFields(row));
      if (resolution.resolved()) {
        instruments++;
        assertNotNull(resolution.properties());
        assertFalse(
            row.get("grit").length() > 0 && resolution.properties().kind().bladed(), row::toString);
      } else {
        resolution.faults().forEach(fault -> assertFalse(fault.expected().code().isBlank()));
      }
    }
    assertTrue(instruments > 200, "only " + instruments + " rows were sound");
  }

  private static InstrumentProperties resolved(String... cells) {
    return InstrumentResolver.resolve(fields(cells)).orThrow();
  }

  private static List<FieldFault> faults(String... cells) {
    Resolution resolution = InstrumentResolver.resolve(fields(cells));
    assertNull(resolution.properties(), () -> "expected faults, got " + resolution.properties());
    return new ArrayList<>(resolution.faults());
  }

  private static DrawerFields fields(String... cells) {
    Map<String, String> row = new HashMap<>();
    for (int i = 0; i < cells.length; i += 2) {
      row.put(cells[i], cells[i + 1]);
    }
    return new DrawerFields(row);
  }

  private static List<String> words(InstrumentProperties read) {
    return read.assumed().stream().map(InstrumentResolverTest::word).toList();
  }

  private static String word(Remark one) {
    return one.code()
        + one.values().stream()
            .map(InstrumentResolverTest::value)
            .collect(Collectors.joining(", ", " ", ""));
  }

  private static String value(Object value) {
    if (value instanceof Length length) {
      return String.format(Locale.ROOT, "%.2f", length.millimetres());
    }
    return value instanceof InstrumentShape shape ? shape.code() : value.toString();
  }
}
