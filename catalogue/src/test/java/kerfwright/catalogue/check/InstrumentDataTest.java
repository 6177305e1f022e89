package kerfwright.catalogue.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import kerfwright.catalogue.TestTable;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.tooth.ToothNotation;
import kerfwright.quantity.SourceKey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InstrumentDataTest {
  private static final String ROOT = "/kerfwright/catalogue/";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "blade",
        "characteristic",
        "grit",
        "handpiece",
        "head-length",
        "nominal-size",
        "shank",
        "shape",
        "us-size",
        "working-part"
      })
  void theReadmeNamesJustTheColumnsOfTheHeader(String topic) throws IOException {
    List<String> named = new ArrayList<>();
    boolean table = false;
    for (String line : text(topic + "/README.md").split("\n")) {
      if (line.startsWith("|---")) {
        table = true;
      } else if (table && line.startsWith("| ")) {
        named.add(line.split("\\|")[1].strip());
      }
    }
    assertEquals(List.of(text(topic + "/values.csv").split("\n")[0].split(",")), named);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "blade",
        "characteristic",
        "grit",
        "handpiece",
        "head-length",
        "nominal-size",
        "shank",
        "shape",
        "us-size",
        "working-part"
      })
  void everyRowIsMarkedAsItsSourcesAre(String topic) {
    for (Map<String, String> row : TestTable.rows(ROOT + topic + "/values.csv")) {
      boolean onlyMemory =
          List.of(row.get("sources").split("; ")).stream().allMatch(key -> key.endsWith("-memory"));
      if (onlyMemory) {
        assertEquals("from-memory", row.get("basis"), row.get("id"));
      }
      assertFalse(row.get("locator").isBlank(), row.get("id"));
    }
  }

  @Test
  void theSourcesNamedInCodeAndNotesAreInTheRegister() throws IOException {
    for (SourceKey key : ToothNotation.SOURCES) {
      assertTrue(Sources.packaged().find(key).isPresent(), key.key());
    }
    var mention = java.util.regex.Pattern.compile("standards-s\\d\\d");
    for (String topic : List.of("characteristic", "grit", "shank", "shape", "us-size", "blade")) {
      var found = mention.matcher(text(topic + "/values.csv"));
      while (found.find()) {
        assertTrue(
            Sources.packaged().find(new SourceKey(found.group())).isPresent(), found.group());
      }
    }
  }

  @Test
  void noFigureRestsOnASourceThatIsNotRead() {
    Set<String> basisOfSeen = new HashSet<>();
    for (Map<String, String> row : TestTable.rows(ROOT + "shape/values.csv")) {
      if (row.get("basis").equals("seen")) {
        basisOfSeen.add(row.get("code"));
      }
    }
    assertEquals(Set.of("001", "010", "197", "237", "243"), basisOfSeen);
  }

  private static String text(String file) throws IOException {
    try (var stream =
        Objects.requireNonNull(InstrumentDataTest.class.getResourceAsStream(ROOT + file), file)) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
