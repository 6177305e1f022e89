package kerfwright.practice.drawer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import kerfwright.catalogue.number.DrawerFields;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MoveRuleTest {
  private static StockItem anInstrument(boolean singleUse, InstrumentState state, int uses) {
    StockItem fresh =
        StockItem.fresh(
            new UUID(1, 2),
            "D1",
            new DrawerFields(Map.of("iso", "806 314 197 534 014", "head_length_mm", "8")));
    return fresh.next(
        draft -> {
          draft.singleUse = singleUse;
          draft.state = state;
          draft.uses = uses;
        });
  }

  @Test
  void nothingUsedBecomesCleanButThroughCleaningAndALoad() {
    // every way from used to clean passes both
    for (InstrumentState without : EnumSet.of(InstrumentState.CLEANING, InstrumentState.IN_LOAD)) {
      assertFalse(reachable(InstrumentState.USED, without).contains(InstrumentState.CLEAN));
    }
    assertTrue(reachable(InstrumentState.USED, null).contains(InstrumentState.CLEAN));
  }

  private static Set<InstrumentState> reachable(InstrumentState from, InstrumentState without) {
    Set<InstrumentState> seen = EnumSet.of(from);
    Deque<InstrumentState> open = new ArrayDeque<>(seen);
    while (!open.isEmpty()) {
      for (InstrumentState next : open.pop().next(false)) {
        if (next != without && seen.add(next)) {
          open.push(next);
        }
      }
    }
    return seen;
  }

  @ParameterizedTest
  @EnumSource
  void aSingleUseInstrumentNeverComesBackOnceUsed(InstrumentState from) {
    StockItem used = anInstrument(true, from, 1);
    for (InstrumentState to : InstrumentState.values()) {
      if (MoveRule.against(used, to).isEmpty()) {
        assertTrue(
            EnumSet.of(InstrumentState.USED, InstrumentState.QUARANTINE, InstrumentState.WITHDRAWN)
                .contains(to),
            from + " to " + to);
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void aSingleUseInstrumentIsNeverReprocessed(InstrumentState from) {
    for (InstrumentState to : EnumSet.of(InstrumentState.CLEANING, InstrumentState.IN_LOAD)) {
      assertTrue(MoveRule.against(anInstrument(true, from, 0), to).isPresent());
    }
  }

  @ParameterizedTest
  @EnumSource
  void nothingLeavesTheWithdrawnOnes(InstrumentState to) {
    assertTrue(MoveRule.against(anInstrument(false, InstrumentState.WITHDRAWN, 0), to).isPresent());
  }

  @Test
  void aRefusalSaysWhatIsPossible() {
    Refusal refusal =
        MoveRule.against(anInstrument(false, InstrumentState.USED, 1), InstrumentState.CLEAN)
            .orElseThrow();
    assertEquals(
        new Refusal.NoWay(
            InstrumentState.USED,
            InstrumentState.CLEAN,
            false,
            EnumSet.of(
                InstrumentState.CLEANING, InstrumentState.QUARANTINE, InstrumentState.WITHDRAWN)),
        refusal);
  }

  @Test
  void aUseCountsOnceEvenWhenCleaningFails() {
    StockItem used =
        MoveRule.moved(anInstrument(false, InstrumentState.CLEAN, 3), InstrumentState.USED);
    assertEquals(4, used.uses());
    StockItem again =
        MoveRule.moved(MoveRule.moved(used, InstrumentState.CLEANING), InstrumentState.USED);
    assertEquals(4, again.uses());
    assertEquals(0, again.sterilisations());
  }

  @Test
  void anItemWithoutASoundLabelCannotExist() {
    StockItem sound = anInstrument(false, InstrumentState.CLEAN, 0);
    assertThrows(
        IllegalArgumentException.class, () -> sound.next(draft -> draft.label = "two words"));
    assertThrows(IllegalArgumentException.class, () -> sound.next(draft -> draft.pieces = 0));
  }
}
