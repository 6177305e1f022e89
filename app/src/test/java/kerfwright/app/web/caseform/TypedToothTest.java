package kerfwright.app.web.caseform;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.input.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TypedToothTest {
  private static String read(String typed, String picked, String shownBy) {
    Map<String, List<String>> sent = new LinkedHashMap<>();
    sent.put("tooth", List.of(typed));
    sent.put("tooth_pick", List.of(picked));
    sent.put("tooth_by", List.of(shownBy));
    Node.Mapping node = (Node.Mapping) TypedTooth.node(CaseForm.of(sent));
    var only = node.entries().entrySet().iterator().next();
    return only.getKey() + " " + ((Node.Scalar) only.getValue().value()).text();
  }

  @ParameterizedTest
  @CsvSource({
    "14, fdi, fdi 14",
    "14, universal, universal 14",
    "14, palmer, fdi 14",
    "FDI 14, universal, fdi 14",
    "#14, fdi, universal 14",
    "ur6, fdi, palmer UR6",
    "ur6, universal, palmer UR6",
    "B, fdi, universal B"
  })
  void aBareNumberIsReadInTheNotationTheFormWasShownIn(String typed, String by, String meant) {
    assertEquals(meant, read(typed, "", by));
  }

  @Test
  void aPickedToothIsFdiWhateverIsShownAndWhatIsTypedCounts() {
    assertEquals("fdi 16", read("", "16", "universal"));
    assertEquals("universal 3", read("3", "16", "universal"));
  }
}
