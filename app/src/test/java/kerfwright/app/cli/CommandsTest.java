package kerfwright.app.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import kerfwright.app.Golden;
import kerfwright.app.Run;
import kerfwright.app.Wiring;
import kerfwright.app.plan.APlan;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandsTest {
  private static final String CASE =
      "src/main/resources/kerfwright/app/demo/cases/access-metal-ceramic.yaml";
  private static final String DRAWER = "../examples/drawer-demo.csv";
  private static final List<String> COMMANDS =
      List.of(
          "serve",
          "plan",
          "number",
          "alike",
          "tooth",
          "material",
          "heat",
          "day",
          "evidence",
          "own-cut",
          "record",
          "export",
          "restore",
          "upgrade",
          "doctor");

  private static JsonNode json(Run run) throws IOException {
    return new ObjectMapper().readTree(run.out());
  }

  @Test
  void aToothIsToldInThreeNotations() throws IOException {
    Run run = Run.of("tooth", "16");
    assertEquals(0, run.code());
    Golden.check("tooth-16.txt", run.out());
    assertTrue(run.err().contains("means different teeth"));
    Golden.check("tooth-ur6.json", Run.of("tooth", "UR6", "--json").out());
  }

  @Test
  void aNumberIsExplainedGroupByGroup() throws IOException {
    Golden.check("number.txt", Run.of("number", "806 314 001 524 016").out());
    assertEquals(
        Run.of("number", "806314001524016").out(),
        Run.of("number", "806", "314", "001", "524", "016").out());
    Golden.check("number.json", Run.of("number", "806 314 001 524 016", "--json").out());
  }

  @Test
  void aUsSizeCrossesOver() throws IOException {
    Run run = Run.of("number", "--us", "330", "--json");
    assertEquals(0, run.code(), run.err());
    assertEquals("330", json(run).get("us").asText());
    assertTrue(Run.of("number", "--us", "330").out().contains("US 330"));
  }

  @Test
  void aMaterialShowsEveryValueWithSourceAndStanding() throws IOException {
    Run run = Run.of("material", "enamel", "--json");
    assertEquals(0, run.code(), run.err());
    JsonNode json = json(run);
    assertEquals("material/1", json.get("contract").asText());
    for (JsonNode value : json.get("values")) {
      assertFalse(value.get("basis").asText().isEmpty());
      for (JsonNode source : value.get("sources")) {
        assertTrue(json.get("sources").has(source.asText()), source.asText());
      }
    }
    assertTrue(Run.of("material", "enamel").out().contains("What the models take"));
  }

  @Test
  void aPlanIsPrintedInTheLanguageAskedFor() {
    Run german = Run.of("plan", CASE, "--drawer", DRAWER, "--samples", "8", "--language", "de");
    assertEquals(0, german.code(), german.err());
    assertTrue(german.out().startsWith("SCHNITTPLAN "), german.out());
    Run unknown = Run.of("plan", CASE, "--language", "xx");
    assertEquals(2, unknown.code());
    assertTrue(unknown.err().contains("must be one of en, de"), unknown.err());
  }

  @Test
  void aPlanIsPrintedAsTextAndAsJson() throws IOException {
    Run text = Run.of("plan", CASE, "--drawer", DRAWER, "--samples", "8");
    assertEquals(0, text.code(), text.err());
    assertTrue(text.out().startsWith("CUT PLAN K-0412: tooth 16"), text.out());
    assertTrue(text.out().contains("STANDING CAUTIONS"));
    Run json = Run.of("plan", CASE, "--drawer", DRAWER, "--samples", "8", "--json");
    assertEquals("plan/1", json(json).get("contract").asText());
    assertEquals("", json.err());
  }

  @Test
  void theSameSeedGivesTheSameBytes() {
    String[] once = {"plan", CASE, "--drawer", DRAWER, "--samples", "16", "--seed", "5", "--json"};
    assertEquals(Run.of(once).out(), Run.of(once).out());
  }

  @Test
  void aRefusalIsPrintedAndEndsWithOne(@TempDir Path folder) {
    Wiring usual = Wiring.production();
    Wiring refusing =
        new Wiring(
            usual.cases(),
            usual.instruments(),
            (cutCase, drawer, options) -> APlan.refused(),
            usual.demoDrawer(),
            usual.demoCases(),
            usual.server());
    Path card = folder.resolve("card.pdf");
    Run run = Run.of(refusing, "plan", CASE, "--pdf", card.toString());
    assertEquals(1, run.code());
    assertTrue(run.out().contains("Nothing is left to cut: what must be kept"));
    assertFalse(Files.exists(card));
  }

  @Test
  void aCardIsWrittenWholeAndAlone(@TempDir Path folder) throws IOException {
    Path card = folder.resolve("card.pdf");
    Run run = Run.of("plan", CASE, "--drawer", DRAWER, "--samples", "8", "--pdf", card.toString());
    assertEquals(0, run.code(), run.err());
    String head = new String(Files.readAllBytes(card), 0, 5, StandardCharsets.US_ASCII);
    assertEquals("%PDF-", head);
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(1, files.count());
    }
  }

  @Test
  void badInputEndsWithTwoAndWritesNothing(@TempDir Path folder) throws IOException {
    Path bad = folder.resolve("bad.yaml");
    Files.writeString(bad, Files.readString(Path.of(CASE)).replace("co-cr-alloy", "co-cr"));
    Path card = folder.resolve("card.pdf");
    Run run = Run.of("plan", bad.toString(), "--pdf", card.toString());
    assertEquals(2, run.code());
    assertEquals("", run.out());
    assertTrue(run.err().contains("bad.yaml:8: layers[1].material"), run.err());
    assertTrue(run.err().contains("did you mean co-cr-alloy?"), run.err());
    assertFalse(Files.exists(card));
  }

  @Test
  void aCardInAFolderThatIsNotThereIsBadInput() {
    Run run = Run.of("plan", CASE, "--samples", "8", "--pdf", "no/such/folder/card.pdf");
    assertEquals(2, run.code());
    assertTrue(run.err().contains("existing folder"), run.err());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plan none.yaml",
        "plan",
        "plan " + CASE + " --drawer none.csv",
        "plan " + CASE + " --samples 0",
        "plan " + CASE + " --samples many",
        "plan " + CASE + " --seed x",
        "plan " + CASE + " --colour red",
        "tooth 99",
        "tooth",
        "number 12",
        "number",
        "number --us 99999",
        "number 806314001524016 --us 330",
        "material wood",
        "heat none.yaml",
        "heat",
        "day none.yaml",
        "day",
        "serve --port 70000",
        "serve --data /no/such/folder",
        "dance",
        "",
      })
  void whatCannotBeUsedIsToldWithoutAStackTrace(String line) {
    Run run = Run.of(line.isEmpty() ? new String[0] : line.split(" "));
    assertEquals(2, run.code(), run.err());
    assertEquals("", run.out());
    assertFalse(run.err().isBlank());
    assertFalse(run.err().contains("\tat "), run.err());
    assertFalse(run.err().contains("Exception"), run.err());
    Run german = Run.of((line + " --language de").strip().split(" "));
    assertEquals(2, german.code(), german.err());
    assertNotEquals(first(run), first(german));
  }

  private static String first(Run run) {
    return run.err().lines().findFirst().orElse("");
  }

  @Test
  void everyTextOfTheHelpIsShownInEveryLanguage() {
    for (Language language : Language.values()) {
      StringBuilder all = new StringBuilder(Run.of("-h", "--language", language.id()).out());
      for (String name : COMMANDS) {
        all.append(Run.of(name, "-h", "--language", language.id()).out());
      }
      String shown = all.toString().replaceAll("\\s+", "");
      Say say = Say.in(language);
      for (String key : say.keys("help")) {
        String text = say.at(key).replaceAll("\\$\\{.*|%n|\\s+", "");
        assertTrue(shown.contains(text), key + ": " + text);
      }
    }
  }

  @Test
  void aFaultOfTheProgramIsOneLine() {
    Wiring usual = Wiring.production();
    Wiring broken =
        new Wiring(
            usual.cases(),
            usual.instruments(),
            (cutCase, drawer, options) -> {
              throw new IllegalStateException("did not converge");
            },
            usual.demoDrawer(),
            usual.demoCases(),
            usual.server());
    Run run = Run.of(broken, "plan", CASE, "--drawer", DRAWER);
    assertEquals(3, run.code());
    assertEquals(1, run.err().lines().count(), run.err());
    assertTrue(run.err().contains("did not converge"));
  }

  @Test
  void onlyCommandsThatWorkAreListed() {
    String help = Run.of("--help").out();
    for (String name : COMMANDS) {
      assertTrue(help.contains("\n  " + name + " "), help);
    }
  }
}
