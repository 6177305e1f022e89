package kerfwright.app.plan;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import kerfwright.app.Run;
import kerfwright.app.Wiring;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.caution.CautionCondition;
import kerfwright.catalogue.caution.Cautions;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.Procedure;
import kerfwright.quantity.RotationalSpeed;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every case under examples does what its first line says, and its plan holds together. */
class ExamplesTest {
  private static final Path FOLDER = Path.of("../examples");
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final List<String> STEP_ESTIMATES =
      List.of(
          "speedUnderLoadRpm",
          "rimSpeedMPerS",
          "loadN",
          "coolantMlPerMin",
          "cutSeconds",
          "pauseSeconds",
          "fromMm",
          "toMm",
          "removalMm3PerMin",
          "powerW",
          "raUm",
          "timeS");
  private static final Map<String, DrawerInstrument> DRAWER = new HashMap<>();

  @BeforeAll
  static void readTheDrawer() throws Exception {
    Wiring.production()
        .demoDrawer()
        .read()
        .instruments()
        .forEach(instrument -> DRAWER.put(instrument.id(), instrument));
  }

  static List<Path> cases() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(ExamplesTest::isCase).sorted().toList();
    }
  }

  private static boolean isCase(Path file) {
    try {
      return file.toString().endsWith(".yaml")
          && Files.readString(file).lines().anyMatch(line -> line.startsWith("procedure:"));
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }

  static List<Path> badFiles() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER.resolve("bad"))) {
      return files.sorted().toList();
    }
  }

  @Test
  void everyProcedureHasAnExample() throws IOException {
    Set<String> seen = new HashSet<>();
    for (Path file : cases()) {
      Files.readAllLines(file).stream()
          .filter(line -> line.startsWith("procedure:"))
          .forEach(line -> seen.add(line.substring("procedure:".length()).strip()));
    }
    assertEquals(new HashSet<>(Procedure.ids()), seen);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void anExampleDoesWhatItsFirstLineSays(Path file) throws IOException {
    String first = Files.readAllLines(file).get(0);
    Run run = Run.of("plan", file.toString(), "--json");
    JsonNode plan = JSON.readTree(run.out());
    if (first.startsWith("# Plans")) {
      assertEquals(0, run.code(), run.err());
      holdsTogether(plan);
    } else {
      assertTrue(first.startsWith("# Refuses ("), first);
      assertEquals(1, run.code(), run.err());
      refused(plan, first.substring(first.indexOf('(') + 1, first.indexOf(')')));
    }
    standingCautionsShow(plan);
    assertEquals(run.out(), Run.of("plan", file.toString(), "--json").out(), "same seed");
  }

  /** Written anew with {@code -Dreadme.write=true}. */
  @Test
  void theReadmePrintsARealPlan() throws IOException {
    Path readme = Path.of("../README.md");
    String text = Files.readString(readme);
    String fence = "```text\n";
    int from = text.indexOf(fence) + fence.length();
    int to = text.indexOf("\n```", from);
    String plan =
        shortened(Run.of("plan", FOLDER.resolve("access-natural-vital.yaml").toString()).out());
    if (Boolean.getBoolean("readme.write")) {
      Files.writeString(readme, text.substring(0, from) + plan + text.substring(to));
      return;
    }
    assertEquals(plan, text.substring(from, to), "README.md is stale: -Dreadme.write=true");
  }

  /** The head of a plan with its first step, what the steps make in all, and who does what. */
  private static String shortened(String plan) {
    int second = plan.indexOf("\n\n2. ");
    int all = plan.indexOf("\n\nALL STEPS");
    int notes = plan.indexOf("\n\n", plan.indexOf("\n\nBY INSTRUMENT") + 2);
    return plan.substring(0, second).strip() + "\n\n[...]" + plan.substring(all, notes);
  }

  @ParameterizedTest
  @MethodSource("badFiles")
  void badInputIsToldWithFileAndExpectationAndNothingElse(Path file) {
    Run run =
        file.toString().endsWith(".csv")
            ? Run.of(
                "plan", FOLDER.resolve("access-gold.yaml").toString(), "--drawer", file.toString())
            : Run.of("plan", file.toString());
    assertEquals(2, run.code(), run.err());
    assertEquals("", run.out());
    assertTrue(run.err().contains(file.getFileName().toString()), run.err());
    assertFalse(run.err().contains("Exception"), run.err());
    assertFalse(run.err().contains("\tat "), run.err());
  }

  private static void refused(JsonNode plan, String code) {
    assertTrue(plan.get("steps").isEmpty());
    assertTrue(plan.get("pulp").isNull());
    JsonNode finding = plan.get("findings").get(0);
    assertEquals("refuse", finding.get("severity").asText());
    assertEquals(code, finding.get("code").asText());
    assertTrue(finding.get("text").asText().length() > 40, finding.toString());
  }

  private static void standingCautionsShow(JsonNode plan) {
    Set<String> shown = new HashSet<>();
    plan.get("cautions").forEach(caution -> shown.add(caution.get("text").asText()));
    Cautions.packaged()
        .findings(Set.of(CautionCondition.ALWAYS, CautionCondition.MODEL_OUTPUT))
        .forEach(
            standing ->
                assertTrue(
                    shown.contains(Say.in(Language.ENGLISH).of(standing.message())),
                    standing.code()));
  }

  private static void holdsTogether(JsonNode plan) {
    assertEquals("plan/1", plan.get("contract").asText());
    assertFalse(plan.get("steps").isEmpty());
    double least = 1e-9;
    // a whole crown or post is a long appointment
    ordered(plan.get("totalTimeS"), 1, 7200, "totalTimeS");
    double deepest = 0;
    int order = 0;
    for (JsonNode step : plan.get("steps")) {
      order++;
      assertEquals(order, step.get("order").asInt());
      step(step);
      assertTrue(step.get("fromMm").get("typical").asDouble() <= at(step, "toMm") + least);
      // the lingual shoulder of a front tooth lies below the roof, 2 mm down the canal
      boolean inCanal = step.get("operation").toString().contains("remove-lingual-shoulder");
      deepest = Math.max(deepest, at(step, "toMm") - (inCanal ? 2 : 0));
    }
    double stack = 0;
    double dentine = 0;
    for (JsonNode layer : plan.get("layers")) {
      stack += layer.get("thicknessMm").get("typical").asDouble();
      if (layer.get("material").asText().equals("dentine")) {
        dentine += layer.get("thicknessMm").get("typical").asDouble();
      }
    }
    assertTrue(deepest <= stack + 1e-6, deepest + " in " + stack);
    pulp(plan, dentine);
    for (JsonNode other : plan.get("runnersUp")) {
      assertTrue(other.get("step").asInt() >= 1 && other.get("step").asInt() <= order);
      assertTrue(other.get("costRatio").asDouble() > 0, other.toString());
      assertFalse(other.get("why").asText().isBlank());
    }
    plan.get("findings").forEach(f -> assertFalse(f.get("severity").asText().equals("refuse")));
    Set<String> texts = new HashSet<>();
    plan.get("findings").forEach(f -> assertTrue(texts.add(f.get("text").asText()), f.toString()));
  }

  private static void step(JsonNode step) {
    String where = step.get("order") + " " + step.get("material").asText();
    STEP_ESTIMATES.forEach(name -> ordered(step.get(name), 0, 1e6, where + " " + name));
    ordered(step.get("loadN"), 0.05, 5, where);
    ordered(step.get("timeS"), 0.01, 3600, where);
    ordered(step.get("raUm"), 0.005, 30, where);
    DrawerInstrument instrument = DRAWER.get(step.get("instrument").get("id").asText());
    assertEquals(DrawerInstrument.State.CLEAN, instrument.state(), where);
    RotationalSpeed most = instrument.properties().maximumSpeed();
    double handpiece =
        Handpieces.byId(step.get("handpiece").asText()).orElseThrow().drive().freeSpeed().rpm();
    double set = step.get("setSpeedRpm").asDouble();
    assertAll(
        () -> assertTrue(most != null && set <= most.rpm() + 1e-6, where + " maker's speed"),
        () -> assertTrue(set <= handpiece + 1e-6, where + " handpiece's speed"),
        () -> assertTrue(at(step, "speedUnderLoadRpm") <= set + 1e-6, where + " under load"),
        () -> assertFalse(step.get("reasons").isEmpty(), where + " has no reason"),
        () -> assertFalse(step.get("changeCue").asText().isBlank(), where + " has no cue"));
  }

  private static void pulp(JsonNode plan, double dentineMm) {
    JsonNode pulp = plan.get("pulp");
    if (!pulp.get("judged").asBoolean()) {
      assertFalse(pulp.has("peakRiseK"), "no figure where the pulp is not to live");
      for (JsonNode step : plan.get("steps")) {
        assertFalse("pulp-wall".equals(step.get("heatTarget").asText()), step.toString());
      }
      return;
    }
    ordered(pulp.get("peakRiseK"), 0, 60, "peakRiseK");
    ordered(pulp.get("secondsAboveLimit"), 0, 3600, "secondsAboveLimit");
    ordered(pulp.get("cem43Min"), 0, 1e9, "cem43Min");
    ordered(pulp.get("remainingDentineMm"), 0, 20, "remainingDentineMm");
    assertEquals(5.5, pulp.get("limitK").asDouble());
    if (dentineMm > 0 && vital(plan)) {
      assertTrue(pulp.get("peakRiseK").get("typical").asDouble() < 5.5);
      assertTrue(pulp.get("remainingDentineMm").get("typical").asDouble() >= 0.5 - 1e-6);
    }
  }

  /** A vital tooth is told by its standing caution. */
  private static boolean vital(JsonNode plan) {
    for (JsonNode caution : plan.get("cautions")) {
      if (caution.get("text").asText().startsWith("A pulp rise of 5.5 K")) {
        return true;
      }
    }
    return false;
  }

  private static double at(JsonNode step, String name) {
    return step.get(name).get("typical").asDouble();
  }

  private static void ordered(JsonNode estimate, double least, double most, String what) {
    double low = estimate.get("low").asDouble();
    double typical = estimate.get("typical").asDouble();
    double high = estimate.get("high").asDouble();
    assertTrue(low <= typical && typical <= high, what + " " + estimate);
    assertTrue(low >= 0 && typical >= least && typical <= most, what + " " + estimate);
  }
}
