package kerfwright.catalogue.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Table;
import org.junit.jupiter.api.Test;

class PropertyTablesTest {
  private final Faults faults = new Faults();

  @Test
  void aSoundRowIsRead() {
    assertEquals(1, published("a,enamel,hardness,1,2,3,GPa,,park-2008,,seen,yes,").size());
    assertTrue(faults.found().isEmpty());
  }

  @Test
  void anUnknownUnitIsAFault() {
    published("a,enamel,hardness,1,2,3,HV,,park-2008,,seen,yes,");
    assertEquals(
        "t.csv:2, column unit: fault.plain ['HV' must be GPa]", faults.found().get(0).toString());
  }

  @Test
  void anUnknownSourceIsAFault() {
    published("a,enamel,hardness,1,2,3,GPa,,nobody-1900,,seen,yes,");
    assertEquals("fault.cell-source", faults.found().get(0).expected().key());
  }

  @Test
  void anUnknownPropertyAndMaterialAreFaults() {
    published("a,granite,colour,1,2,3,GPa,,park-2008,,seen,yes,");
    assertEquals(
        List.of("material", "quantity"), faults.found().stream().map(f -> f.column()).toList());
  }

  @Test
  void aValueWithoutSourceMustBeAProjectSettingWithAReason() {
    inputs("a,enamel,hardness,1,2,3,GPa,,,,from-memory,");
    inputs("a,enamel,hardness,1,2,3,GPa,,,,project-setting,");
    assertEquals(List.of("source", "note"), faults.found().stream().map(f -> f.column()).toList());
  }

  @Test
  void aModelInputNeedsAllThreeNumbersAndKnownRows() {
    inputs("a,enamel,hardness,1,,3,GPa,ghost-1,park-2008,,seen,");
    assertEquals(
        List.of("low", "taken_from"), faults.found().stream().map(f -> f.column()).toList());
  }

  private List<PropertyTables.Published> published(String row) {
    return read("material/values.csv", row, r -> PropertyTables.published(r, List.of("enamel")));
  }

  private void inputs(String row) {
    read("model-input/values.csv", row, r -> PropertyTables.input(r, List.of("enamel"), Set.of()));
  }

  /** Reads a row under the header of a packaged table. */
  private <T> List<T> read(String like, String row, Function<DataRow, T> reader) {
    String text = String.join(",", Table.header(like)) + "\n" + row + "\n";
    return Topic.values(Table.parse("t.csv", new StringReader(text), List.of(), faults), reader);
  }
}
