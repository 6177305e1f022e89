package kerfwright.catalogue.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kerfwright.quantity.Message;
import org.junit.jupiter.api.Test;

class TableTest {
  private static final List<String> HEADER = List.of("id", "low", "typical", "high", "basis");

  private final Faults faults = new Faults();

  @Test
  void aWrongHeaderGivesNoRowsAndOneFault() {
    assertTrue(parse("id,low\na,1\n").isEmpty());
    assertEquals(
        "t.csv:1, column -: fault.table-header [id,low,typical,high,basis]", only().toString());
  }

  @Test
  void aRowWithTooFewCellsIsAFaultWithItsLine() {
    assertEquals(1, parse("id,low,typical,high,basis\na,1\nb,1,2,3,seen\n").size());
    assertEquals("t.csv:2, column -: fault.table-cells [2, 5]", only().toString());
  }

  @Test
  void lowAboveHighIsAFault() {
    parse("id,low,typical,high,basis\na,3,,2,seen\n").get(0).numbers();
    assertEquals("low", only().column());
    assertEquals(2, only().line());
  }

  @Test
  void aWordWhereANumberBelongsIsAFault() {
    parse("id,low,typical,high,basis\na,much,,,seen\n").get(0).numbers();
    assertEquals(Message.of("fault.cell-number", "much"), only().expected());
  }

  @Test
  void blanksStayBlank() {
    Numbers numbers = parse("id,low,typical,high,basis\na,,,,seen\n").get(0).numbers();
    assertEquals(new Numbers(null, null, null), numbers);
    assertTrue(faults.found().isEmpty());
  }

  @Test
  void anIdMayStandOnlyOnce() {
    List<Row> rows = parse("id,low,typical,high,basis\na,,,,seen\na,,,,seen\n");
    Set<String> seen = new HashSet<>();
    rows.forEach(row -> row.uniqueId("id", seen));
    assertEquals(3, only().line());
  }

  @Test
  void anUnknownBasisIsAFault() {
    parse("id,low,typical,high,basis\na,,,,guessed\n").get(0).basis();
    assertEquals("fault.cell-one-of", only().expected().key());
    assertEquals("guessed", only().expected().values().get(0));
  }

  @Test
  void aMissingFileIsAFault() {
    Table.read("nowhere/values.csv", faults);
    assertEquals(
        "nowhere/values.csv:0, column -: fault.plain [the file is missing]", only().toString());
  }

  @Test
  void allFaultsAreToldAtOnce() {
    parse("id,low,typical,high,basis\na,x,,,seen\nb,,,y,guessed\n")
        .forEach(
            row -> {
              row.numbers();
              row.basis();
            });
    BadDataException all = assertThrows(BadDataException.class, faults::throwIfAny);
    assertEquals(3, all.faults().size());
    assertTrue(String.valueOf(all.getMessage()).startsWith("3 fault(s) in the packaged data:"));
  }

  private List<Row> parse(String text) {
    return Table.parse("t.csv", new StringReader(text), HEADER, faults);
  }

  private DataFault only() {
    assertEquals(1, faults.found().size(), faults.found().toString());
    return faults.found().get(0);
  }
}
