package kerfwright.app.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import kerfwright.catalogue.Remark;
import kerfwright.catalogue.caution.Caution;
import kerfwright.catalogue.caution.Cautions;
import kerfwright.catalogue.handpiece.HandpieceEntry;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.stack.UsualLayer;
import kerfwright.catalogue.stack.UsualStacks;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.planner.rule.EvidenceRule;
import kerfwright.planner.rule.EvidenceRule.Speaks;
import kerfwright.planner.rule.EvidenceRules;
import kerfwright.planner.rule.OrderRules;
import kerfwright.planner.rule.Standing;
import kerfwright.planner.rule.Vetoes;
import kerfwright.quantity.Message;
import org.junit.jupiter.api.Test;

/** What planner and catalogue say has its words in both languages. */
class MessagesTest {
  private static final Say ENGLISH = Say.in(Language.ENGLISH);
  private static final Say GERMAN = Say.in(Language.GERMAN);

  @Test
  void theEnglishOfACautionIsTheOneOfTheList() {
    assertFalse(Cautions.packaged().all().isEmpty());
    for (Caution caution : Cautions.packaged().all()) {
      Message message = caution.finding().message();
      assertEquals(caution.text(), ENGLISH.of(message));
      assertFalse(GERMAN.of(message).isBlank());
    }
  }

  @Test
  void everyNoteOnUsualLayersIsSaidInBothLanguages() {
    Set<String> notes = new TreeSet<>();
    UsualStacks stacks = UsualStacks.packaged();
    for (String restoration : stacks.restorations().keySet()) {
      for (String procedure : stacks.procedures()) {
        for (int fdi : List.of(11, 13, 14, 16, 41, 43, 44, 46, 55)) {
          stacks.find(new Tooth(fdi), restoration, procedure, null).stream()
              .flatMap(stack -> stack.layers().stream())
              .map(UsualLayer::note)
              .filter(note -> !note.isEmpty())
              .forEach(notes::add);
        }
      }
    }
    assertTrue(notes.size() > 25, notes.toString());
    for (String note : notes) {
      Message message = Message.of("stack." + note);
      assertFalse(ENGLISH.of(message).isBlank());
      assertFalse(GERMAN.of(message).isBlank());
    }
  }

  @Test
  void everyFigureOfAHandpieceSaysHowItIsKnown() {
    for (HandpieceEntry entry : Handpieces.entries()) {
      assertTrue(entry.figures().size() >= 3);
      for (Remark each : entry.figures()) {
        String figure = ENGLISH.of(each.message());
        assertTrue(
            figure.matches(".*\\((weak source|derived.*|project setting)\\)")
                || figure.startsWith("instrument turns"),
            figure);
      }
    }
  }

  @Test
  void everyRuleHasWordsForTheSidesItSpeaksOn() {
    for (EvidenceRule rule : EvidenceRules.all()) {
      for (Say say : List.of(ENGLISH, GERMAN)) {
        String key = "reason." + rule.code();
        assertEquals(rule.speaks() != Speaks.AGAINST, say.has(key + "-for"), key);
        assertEquals(rule.speaks() != Speaks.FOR, say.has(key + "-against"), key);
      }
    }
  }

  @Test
  void whatARuleTakesAwayIsTold() {
    Stream.of(Vetoes.all(), OrderRules.all())
        .flatMap(List::stream)
        .map(Standing::code)
        .forEach(code -> assertTrue(ENGLISH.has("exclusion." + code), code));
  }

  @Test
  void figuresInMessagesCarryTheDecimalMarkAndNamesStandInTheSentence() {
    Message slip =
        Message.of("exclusion.slip-beyond-margin", new BigDecimal("1.2"), new BigDecimal("0.50"));
    assertTrue(ENGLISH.of(slip).contains("1.2 mm"), ENGLISH.of(slip));
    assertTrue(GERMAN.of(slip).contains("0,50 mm"), GERMAN.of(slip));
    Message dry = Message.of("exclusion.dry-grinding", Message.of("label.material-dentine"));
    assertTrue(ENGLISH.of(dry).startsWith("would grind dentine dry"), ENGLISH.of(dry));
    Message water = Message.of("finding.pulp-heat-uncertain", new BigDecimal("6.1"));
    assertTrue(GERMAN.of(water).contains("6,1 K"), GERMAN.of(water));
    assertTrue(GERMAN.of(water).contains("5,5 K"), GERMAN.of(water));
  }

  @Test
  void aListOfMessagesIsToldOneAfterTheOther() {
    Message remedies =
        Message.of(
            "finding.heat-remedies",
            List.of(
                Message.of("finding.remedy", 1, Message.of("finding.remedy-load")),
                Message.of("finding.remedy", 2, Message.of("finding.remedy-pauses"))));
    assertEquals(
        "To stay below 5.5 K at the pulp wall the plan uses step 1: less load; step 2: longer"
            + " pauses.",
        ENGLISH.of(remedies));
  }
}
