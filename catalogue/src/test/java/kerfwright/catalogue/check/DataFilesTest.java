package kerfwright.catalogue.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kerfwright.catalogue.source.Source;
import kerfwright.catalogue.source.Sources;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rules every packaged table must keep. */
class DataFilesTest {
  @Test
  void noTableHasAFault() {
    assertEquals(List.of(), PackagedData.faults());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "material",
        "model-input",
        "tool-material",
        "anatomy",
        "restoration",
        "stack",
        "evidence",
        "claim",
        "caution",
        "limit",
        "reprocessing",
        "operation",
        "size"
      })
  void theReadmeOfATopicListsTheColumnsOfEachOfItsTables(String topic) throws Exception {
    Path folder = root().resolve(topic);
    String readme = Files.readString(folder.resolve("README.md"));
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".csv")).toList()) {
        assertEquals(header(file), listed(readme, file.getFileName().toString()), file.toString());
      }
    }
  }

  @Test
  void theReadmeOfTheRegisterListsItsColumns() throws Exception {
    Path folder = root().resolve("source");
    assertEquals(
        header(folder.resolve("literature.csv")),
        listed(Files.readString(folder.resolve("README.md")), "literature.csv"));
  }

  @Test
  void noSourceOfTheLiteratureIsUnused() throws Exception {
    Set<String> unused = new TreeSet<>();
    for (CSVRecord row : records(root().resolve("source/literature.csv"))) {
      unused.add(row.get("key"));
    }
    unused.removeAll(usedKeys());
    assertEquals(Set.of(), unused);
  }

  @Test
  void everyEntryOfTheLiteratureSaysWhatWasRead() throws Exception {
    for (CSVRecord row : records(root().resolve("source/literature.csv"))) {
      assertFalse(row.get("seen").isBlank(), row.get("key"));
    }
  }

  @Test
  void aCitationIsOneReadableLine() {
    Source park =
        Sources.packaged().find(new kerfwright.quantity.SourceKey("park-2008")).orElseThrow();
    assertEquals(
        "Park S, Quinn JB, Romberg E, Arola D. On the brittleness of enamel and selected dental"
            + " materials. Dent Mater 24(11):1477-1485 (PMC2584618), 2008.",
        park.citation());
  }

  /** The trade's own word: a bur has blades, an abrasive instrument is a diamond instrument. */
  @Test
  void anAbrasiveInstrumentIsNeverCalledABur() throws Exception {
    for (Path file : tables()) {
      if (!file.getParent().endsWith("source")) {
        assertFalse(
            Files.readString(file).toLowerCase(java.util.Locale.ROOT).contains("diamond bur"),
            file.toString());
      }
    }
  }

  private static Set<String> usedKeys() throws Exception {
    Set<String> used = new HashSet<>();
    for (Path file : tables()) {
      if (!file.getParent().endsWith("source")) {
        List<String> columns =
            header(file).stream().filter(c -> c.equals("source") || c.equals("sources")).toList();
        for (CSVRecord row : records(file)) {
          for (String column : columns) {
            used.addAll(Arrays.asList(row.get(column).split("[;\\s]+")));
          }
        }
      }
    }
    return used;
  }

  private static List<String> listed(String readme, String file) {
    int start = readme.indexOf("## `" + file + "`");
    assertTrue(start >= 0, "the README has no section on " + file);
    int end = readme.indexOf("## ", start + 3);
    String section = readme.substring(start, end < 0 ? readme.length() : end);
    List<String> columns = new ArrayList<>();
    Matcher column = Pattern.compile("(?m)^- `([^`]+)`: \\S").matcher(section);
    while (column.find()) {
      columns.add(column.group(1));
    }
    return columns;
  }

  private static List<String> header(Path file) throws IOException {
    try (Stream<String> lines = Files.lines(file)) {
      return Arrays.asList(lines.findFirst().orElseThrow().split(","));
    }
  }

  private static List<CSVRecord> records(Path file) throws IOException {
    try (CSVParser parser =
        CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(Files.newBufferedReader(file))) {
      return parser.getRecords();
    }
  }

  private static List<Path> tables() throws Exception {
    try (Stream<Path> files = Files.walk(root())) {
      return files.filter(f -> f.toString().endsWith(".csv")).toList();
    }
  }

  private static Path root() throws URISyntaxException {
    return Path.of(
            Objects.requireNonNull(
                    DataFilesTest.class.getResource("/kerfwright/catalogue/source/literature.csv"))
                .toURI())
        .getParent()
        .getParent();
  }
}
