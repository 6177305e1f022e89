package kerfwright.catalogue.number;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import kerfwright.catalogue.TestTable;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.quantity.Basis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class NumberEncoderTest {
  /** Whole numbers of the vectors that name a plannable instrument of standard length. */
  static List<String> numbers() {
    return TestTable.rows("/kerfwright/catalogue/number/iso6360-vectors.csv").stream()
        .filter(row -> row.get("input").matches("(806|500|310) (314|204) [0-9 ]{11}"))
        .map(row -> row.get("input"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void propertiesReadFromANumberEncodeToThatNumber(String number) {
    InstrumentProperties read =
        InstrumentResolver.resolve(new DrawerFields(Map.of("iso", number))).orThrow();
    assertEquals(
        List.of(number),
        NumberEncoder.candidates(read).stream().map(c -> c.number().encode()).toList());
    List<String> backwards =
        NumberEncoder.candidates(withoutNumber(read)).stream()
            .map(candidate -> candidate.number().encode())
            .toList();
    assertTrue(backwards.contains(number), number + " " + backwards);
  }

  @Test
  void groupsFromMemoryMarkTheWholeNumber() {
    InstrumentProperties read =
        InstrumentResolver.resolve(new DrawerFields(Map.of("iso", "806 314 001 524 016")))
            .orThrow();
    assertEquals(Basis.DERIVED, NumberEncoder.candidates(withoutNumber(read)).get(0).basis());
    InstrumentProperties flame =
        InstrumentResolver.resolve(new DrawerFields(Map.of("iso", "806 314 249 524 016")))
            .orThrow();
    assertEquals(Basis.FROM_MEMORY, NumberEncoder.candidates(withoutNumber(flame)).get(0).basis());
  }

  @Test
  void aKindWithoutAMaterialGroupHasNoNumber() {
    InstrumentProperties polymer =
        InstrumentResolver.resolve(
                new DrawerFields(
                    Map.of(
                        "kind", "polymer", "shape", "round", "head_mm", "1.4", "shank", "RA",
                        "blades", "6")))
            .orThrow();
    assertEquals(InstrumentKind.POLYMER, polymer.kind());
    assertEquals(List.of(), NumberEncoder.candidates(polymer));
  }

  private static InstrumentProperties withoutNumber(InstrumentProperties read) {
    return new InstrumentProperties(
        read.kind(),
        null,
        null,
        read.shape(),
        read.shapeName(),
        read.grit(),
        read.blades(),
        read.crossCut(),
        read.headDiameter(),
        read.headLength(),
        read.shank(),
        read.overallLength(),
        null,
        List.of());
  }
}
