package kerfwright.catalogue.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Set;
import kerfwright.quantity.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormulaTest {
  private static final Map<String, Double> VALUES =
      Map.of("A", 12.0, "d", 1.5, "S_o", 80.0, "t(#alloy|enamel)", 0.4);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 + 2*3 | 7",
        "(1 + 2)*3 | 9",
        "2^3^2 | 512",
        "-2^2 | -4",
        "7 - 2 - 1 | 4",
        "12/3/2 | 2",
        "0.5*A*(3.4 - 1) | 14.4",
        "min(1.4, 0.5*d) | 0.75",
        "max(min(3, 2), 1) | 2",
        "sqrt(S_o + 1) | 9",
        "d > 1 | 1",
        "d < 1 | 0"
      })
  void aFormulaHasItsValue(String text, double value) {
    assertEquals(value, Formula.of(text).value(VALUES::get), 1e-12);
  }

  @Test
  void anArgumentIsPartOfTheName() {
    Formula formula = Formula.of("A*t(#alloy|enamel)");
    assertEquals(4.8, formula.value(VALUES::get), 1e-12);
    assertEquals(Set.of("A", "t(#alloy|enamel)"), formula.names());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ':',
      value = {
        "'':0:fault.formula-operand",
        "1 +:3:fault.formula-operand",
        "(1:2:fault.found-text",
        "A B:2:fault.formula-operator",
        "min(1):5:fault.found-text",
        "t(#alloy:2:fault.found-text",
        "2 $ 3:2:fault.formula-operator",
        "1.2.3:0:fault.formula-operand",
        "sum of marks:4:fault.formula-operator"
      })
  void whatIsNoFormulaIsToldWithItsPlace(String text, int at, String expected) {
    Message told = assertThrows(Formula.Unreadable.class, () -> Formula.of(text)).told();
    assertEquals("fault.formula", told.key());
    assertEquals(List.of(text, at), told.values().subList(0, 2));
    assertEquals(expected, ((Message) told.values().get(2)).key());
  }
}
