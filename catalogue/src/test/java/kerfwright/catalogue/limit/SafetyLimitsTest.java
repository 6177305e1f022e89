package kerfwright.catalogue.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Table;
import org.junit.jupiter.api.Test;

class SafetyLimitsTest {
  private static final String HEADER =
      "id,quantity,low,typical,high,unit,conditions,source,locator,basis,note";

  /**
   * Zach and Cohen 1965 as quoted by Kwon 2013; Murray 2003; Eriksson and Albrektsson 1983; the
   * carbide table of SAMPE J 2016 (low end of the literature column).
   */
  @Test
  void theLimitsAreThePublishedOnes() {
    SafetyLimits limits = SafetyLimits.packaged();
    assertEquals(5.5, limits.pulpRise().kelvins());
    assertEquals(0.5, limits.remainingDentine().millimetres(), 1e-12);
    assertEquals(47, limits.boneTemperature().celsius(), 1e-9);
    assertEquals(1620, limits.carbideFlexuralStrength().megapascals(), 1e-9);
    assertEquals(4, limits.all().size());
  }

  @Test
  void aFigureFromMemoryIsRefused() {
    Faults faults = read("pulp-rise,x,,5.5,,K,,zach-cohen-1965,,from-memory,");
    assertTrue(
        faults.found().stream()
            .anyMatch(f -> f.column().equals("basis") && f.toString().contains("was seen")));
  }

  @Test
  void aMissingLimitIsAFault() {
    Faults faults = read("pulp-rise,x,,5.5,,K,,zach-cohen-1965,,seen,");
    assertEquals(3, faults.found().size());
    assertTrue(faults.found().stream().allMatch(f -> f.toString().contains("is missing")));
  }

  @Test
  void aLimitInAnotherUnitIsAFault() {
    Faults faults = read("pulp-rise,x,,5.5,,degF,,zach-cohen-1965,,seen,");
    assertTrue(faults.found().stream().anyMatch(f -> f.column().equals("unit")));
  }

  private static Faults read(String row) {
    Faults faults = new Faults();
    SafetyLimits.of(
        Table.parse(
            "limit/values.csv", new StringReader(HEADER + "\n" + row + "\n"), List.of(), faults),
        faults);
    return faults;
  }
}
