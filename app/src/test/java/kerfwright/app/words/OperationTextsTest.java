package kerfwright.app.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerfwright.catalogue.operation.Operation;
import kerfwright.catalogue.operation.OperationTable;
import kerfwright.planner.operation.Cue;
import kerfwright.quantity.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class OperationTextsTest {
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\d+)");
  private static final List<String> TEXTS = List.of("name", "cue", "stop", "hazard", "way", "when");

  private static List<Operation> all() {
    OperationTable table = OperationTable.packaged();
    return table.variants().stream().flatMap(v -> table.operations(v).stream()).toList();
  }

  @ParameterizedTest
  @EnumSource
  void everyOperationHasANameAndAnEnd(Language language) {
    Say say = Say.in(language);
    List<String> missing = new ArrayList<>();
    for (Operation operation : all()) {
      addIf(missing, !say.has(operation.key("name")), operation.key("name"));
      addIf(missing, !say.has(operation.key("cue")), operation.key("cue"));
      boolean asked = operation.when().equals(Operation.HAND);
      addIf(missing, asked && !say.has(operation.key("when")), operation.key("when"));
      addIf(missing, operation.cuts() && !say.has(operation.key("way")), operation.key("way"));
    }
    assertEquals(List.of(), missing);
  }

  /** A language that lacks what one variant says alone must not say what holds for the others. */
  @Test
  void whatOneVariantSaysAloneIsSaidInEnglishRatherThanInGeneral() {
    Bundles.also(Language.ENGLISH, Map.of("operation.one.tried.cue", "0.3 mm"));
    Bundles.also(Language.GERMAN, Map.of("operation.tried.cue", "2 mm"));
    assertEquals("0.3 mm", Bundles.text(Language.GERMAN, "operation.one.tried.cue"));
    assertEquals("2 mm", Bundles.text(Language.GERMAN, "operation.other.tried.cue"));
  }

  private static void addIf(List<String> all, boolean wrong, String what) {
    if (wrong) {
      all.add(what);
    }
  }

  @ParameterizedTest
  @EnumSource
  void noTextNamesAFigureTheOperationDoesNotSay(Language language) {
    List<String> wrong = new ArrayList<>();
    for (Operation operation : all()) {
      for (String text : TEXTS) {
        String key = operation.key(text);
        Matcher named =
            PLACEHOLDER.matcher(Say.in(language).has(key) ? Bundles.text(language, key) : "");
        while (named.find()) {
          addIf(wrong, Integer.parseInt(named.group(1)) >= operation.says().size(), key);
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  @ParameterizedTest
  @EnumSource
  void everyOtherToolHasAName(Language language) {
    Say say = Say.in(language);
    for (Operation operation : all()) {
      for (String tool : operation.window().otherTools()) {
        assertTrue(say.has("operation.tool-" + tool), tool);
      }
    }
  }

  @Test
  void aVariantsOwnTextStandsBeforeTheCommonOne() {
    Say english = Say.in(Language.ENGLISH);
    assertEquals(
        "Grip and unscrew or pull", english.at("operation.post-removal-steel.grip-and-turn.name"));
    assertEquals("Paste, then fluoride", english.at("operation.adjust-enamel.polish-paste.name"));
    assertEquals("Paste", english.at("operation.adjust-composite.polish-paste.name"));
  }

  @Test
  void figuresStandInTheTextWithTheMarkPeopleUse() {
    Operation first = OperationTable.packaged().operations("access-natural-molar").get(0);
    Message cue = new Cue(0, first, Cue.Why.INSPECT, List.of(5.4, 6.4, 7.4)).text("cue");
    assertEquals(
        "Stoppmarke bei 5,4 mm gesetzt, von der Höckerspitze aus gezählt; das Kammerdach liegt bei"
            + " 6,4 mm",
        Say.in(Language.GERMAN).of(cue));
  }
}
