package kerfwright.catalogue.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import kerfwright.catalogue.table.BadDataException;
import kerfwright.catalogue.table.DataFault;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Table;
import org.junit.jupiter.api.Test;

class TopicTest {
  private static final String HEADER = "id,size_mm,sources,locator,basis,confidence,note\n";
  private final Faults faults = new Faults();

  @Test
  void everyFaultIsToldWithFileLineColumnAndWhatWasExpected() {
    read(
        HEADER
            + "a,1.5,standards-s07,page,seen,high,\n"
            + "a,-2,standards-s07,page,seen,high,\n"
            + "b,much,standards-s99,page,heard,hihg,\n"
            + "c,1.0,,page,seen,high,\n");
    List<String> told = faults.found().stream().map(DataFault::toString).toList();
    assertEquals(7, told.size(), told.toString());
    assertTold(told, "thing/values.csv:3, column id: fault.cell-id-twice [a]");
    assertTold(told, "thing/values.csv:3, column size_mm: fault.cell-above-zero [-2]");
    assertTold(told, "thing/values.csv:4, column size_mm: fault.cell-number [much]");
    assertTold(told, "thing/values.csv:4, column sources: fault.cell-source [standards-s99]");
    assertTold(told, "thing/values.csv:4, column basis: fault.cell-one-of [heard, seen, derived");
    assertTold(
        told,
        "thing/values.csv:4, column confidence: fault.nearest [Message[key=fault.cell-one-of, values=[hihg, high, medium");
    assertTold(told, "thing/values.csv:5, column sources: fault.cell-empty");
    BadDataException thrown = assertThrows(BadDataException.class, faults::throwIfAny);
    assertEquals(7, thrown.faults().size());
  }

  @Test
  void aColumnTheFileLacksIsAFault() {
    assertEquals(
        List.of(),
        read(
            "id,size,sources,locator,basis,confidence,note\na,1.5,standards-s07,page,seen,high,\n"));
    assertEquals("size_mm", faults.found().get(0).column());
  }

  @Test
  void aMissingFileIsAFaultNotAnException() {
    Topic.read("no-such-topic/values.csv", faults, row -> 1.0);
    assertTrue(faults.found().toString().contains("no-such-topic/values.csv"));
    assertThrows(BadDataException.class, () -> Topic.read("no-such-topic/values.csv", row -> 1.0));
  }

  @Test
  void aSoundFileGivesItsRows() {
    assertEquals(
        List.of(1.5), read(HEADER + "a,1.5,standards-s07; standards-s08,page,seen,high,\n"));
    assertEquals(List.of(), faults.found());
  }

  private List<Double> read(String text) {
    return Topic.values(
        Table.parse("thing/values.csv", new StringReader(text), List.of(), faults),
        row -> {
          row.provenance();
          return row.requiredPositive("size_mm");
        });
  }

  private static void assertTold(List<String> told, String beginning) {
    assertTrue(told.stream().anyMatch(line -> line.startsWith(beginning)), beginning + "\n" + told);
  }
}
