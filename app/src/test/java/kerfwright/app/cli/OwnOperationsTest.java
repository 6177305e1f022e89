package kerfwright.app.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import kerfwright.app.Run;
import kerfwright.catalogue.operation.OperationTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A procedure that stands in a folder of the practice's own alone. */
class OwnOperationsTest {
  private static final Path DEMO = Path.of("../examples/operations-demo");
  private static final String CASE = DEMO.resolve("fissure-opening.yaml").toString();

  @TempDir Path folder;

  @AfterEach
  void thePackagedOnesAgain() {
    OperationTable.use(OperationTable.packaged());
  }

  private void copy() throws IOException {
    try (Stream<Path> files = Files.list(DEMO)) {
      for (Path file : files.toList()) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    }
  }

  private static JsonNode plan(Path operations) throws IOException {
    Run run = Run.of("plan", CASE, "--operations", operations.toString(), "--json");
    assertEquals(0, run.code(), run.err());
    return new ObjectMapper().readTree(run.out());
  }

  private static List<String> operations(JsonNode plan) {
    return plan.get("steps").findValuesAsText("operation");
  }

  @Test
  void itIsPlannedWithComputedVolumes() throws IOException {
    JsonNode plan = plan(DEMO);
    assertEquals(2, plan.get("steps").size(), plan.toString());
    JsonNode opened = plan.get("steps").get(0);
    // two fissures, 4.0 mm long, 0.5 mm wide, 0.3 mm deep
    assertEquals(2 * 4.0 * 0.5 * 0.3, opened.get("volumeMm3").asDouble(), 1e-9);
    assertEquals(0.3, opened.get("toMm").get("typical").asDouble(), 1e-9);
  }

  @Test
  void itsTextsAreSaidInBothLanguages() {
    String english = Run.of("plan", CASE, "--operations", DEMO.toString()).out();
    assertTrue(english.contains("fissure opening"), english);
    assertTrue(english.contains("Open the fissure"), english);
    assertTrue(english.contains("at 0.3 mm at most"), english);
    String german = Run.of("plan", CASE, "--operations", DEMO.toString(), "--language", "de").out();
    assertTrue(german.contains("Fissurenerweiterung"), german);
    assertTrue(german.contains("Ränder glätten"), german);
  }

  @Test
  void aRowTakenOutTakesItsStepOutOfThePlan() throws IOException {
    copy();
    Path values = folder.resolve("values.csv");
    List<String> rows = Files.readAllLines(values);
    Files.write(values, rows.stream().filter(r -> !r.contains("smooth-fissure")).toList());
    List<String> left = operations(plan(folder));
    assertEquals(1, left.size());
    assertTrue(operations(plan(DEMO)).containsAll(left));
    assertEquals(2, operations(plan(DEMO)).size());
  }

  @Test
  void withoutTheFolderNobodyKnowsTheProcedure() {
    Run.of("plan", CASE, "--operations", DEMO.toString());
    Run run = Run.of("plan", CASE);
    assertEquals(2, run.code());
    assertTrue(run.err().contains("procedure"), run.err());
  }

  @Test
  void everyFaultOfTheFolderIsToldWithLineAndColumn() throws IOException {
    copy();
    Path values = folder.resolve("values.csv");
    String text = Files.readString(values);
    Files.writeString(
        values,
        text.replace(",0.4,1.2,", ",0.4,0.5*wide,").replace("finish,enamel", "polsh,enamel"));
    Run run = Run.of("plan", CASE, "--operations", folder.toString());
    assertEquals(2, run.code());
    assertEquals("", run.out());
    assertTrue(run.err().contains("values.csv:3: most_head: "), run.err());
    assertTrue(run.err().contains("values.csv:4: task: "), run.err());
    assertFalse(run.err().contains("packaged"), run.err());
  }

  private String told(String language, String from, String to) throws IOException {
    Path values = folder.resolve("values.csv");
    String text = Files.readString(DEMO.resolve("values.csv"));
    assertTrue(text.contains(from), from);
    Files.writeString(values, text.replace(from, to));
    Run run = Run.of("plan", CASE, "--operations", folder.toString(), "--language", language);
    assertEquals(2, run.code());
    return run.err();
  }

  @Test
  void faultsAreSaidInEitherLanguage() throws IOException {
    copy();
    String missing = told("de", "id,order,", "id,");
    assertTrue(missing.contains("values.csv:1: die Kopfzeile muss lauten: id,order,"), missing);
    assertTrue(told("en", "id,order,", "id,").contains("the header must be id,order,"));
    String formula = told("de", ",0.4,1.2,", ",0.4,1.2 mm,");
    assertTrue(formula.contains("nach 4 Zeichen wurde ein Rechenzeichen erwartet"), formula);
    assertTrue(told("en", ",0.4,1.2,", ",0.4,1.2.3,").contains("after 0 characters a number, a"));
    String name = told("de", ",0.4,1.2,", ",0.4,wide,");
    assertTrue(name.contains("most_head: „wide“ gibt es nicht unter den Namen"), name);
    String task = told("de", "finish,enamel", "finsh,enamel");
    assertTrue(task.contains("task: „finsh“ muss eines von diesen sein: "), task);
    assertTrue(task.contains("finish"), task);
    assertFalse(task.contains("must"), task);
    String layer = told("en", "finish,enamel", "finish,enamle");
    assertTrue(layer.contains("from: 'enamle' must be one of "), layer);
    assertTrue(told("en", "finish,enamel", "finish,#glas-ceramic").contains("#glass-ceramic"));
  }

  @Test
  void aFolderThatIsNotThereIsBadInputForPagesToo() {
    String none = folder.resolve("none").toString();
    assertEquals(2, Run.of("plan", CASE, "--operations", none).code());
    Run serve = Run.of("serve", "--operations", none);
    assertEquals(2, serve.code());
    assertTrue(serve.err().contains("values.csv: the file cannot be read"), serve.err());
  }

  @Test
  void textsThatCannotBeReadAreTold() throws IOException {
    copy();
    Files.writeString(folder.resolve("texts_de.properties"), "operation.look.name=\\u12\n");
    Run run = Run.of("plan", CASE, "--operations", folder.toString());
    assertEquals(2, run.code());
    assertTrue(run.err().contains("texts_de.properties: "), run.err());
  }
}
