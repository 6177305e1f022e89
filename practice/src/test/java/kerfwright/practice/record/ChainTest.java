package kerfwright.practice.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import kerfwright.catalogue.tooth.Tooth;
import org.junit.jupiter.api.Test;

/**
 * The text of an entry and its hashes; the hashes were computed by another program from the text.
 */
class ChainTest {
  private static final Instant RECORDED = Instant.parse("2026-03-02T10:15:30.000001Z");
  private static final Statement STATEMENT =
      new Statement(
          new UUID(1, 2),
          new CutUse(
              "K-0412",
              new Tooth(16),
              new PlanStep("K-0412/a", 2),
              new UsedInstrument(new UUID(3, 4), "D1", "806 314 197 534 014", new UUID(5, 6)),
              null,
              new Origin(new UUID(7, 8), "S1-20260302-1", "S1-20260302-1.2", "L-22"),
              new Cut(200_000.0, 12.5, 20.0, 1.2, 50.0, Map.of("enamel", 3.25, "dentine", 1.0 / 3)),
              "AB",
              Instant.parse("2026-03-02T10:15:00.000000999Z")),
          new Correction(new UUID(9, 10), false, "CD", "back\\slash\nnext line"),
          List.of(
              new Remark(Remark.Kind.TOO_FAST, List.of("200000", "160000")),
              new Remark(Remark.Kind.CLOCK_AHEAD, List.of())));
  private static final String TEXT =
      """
      kerfwright cut record 1
      number: 1
      id: 00000000-0000-0001-0000-000000000002
      recorded: 2026-03-02T10:15:30.000001Z
      case: K-0412
      tooth: 16
      plan: K-0412/a
      step: 2
      instrument: 00000000-0000-0003-0000-000000000004
      label: D1
      what: 806 314 197 534 014
      piece-of: 00000000-0000-0005-0000-000000000006
      load: 00000000-0000-0007-0000-000000000008
      load-name: S1-20260302-1
      pouch: S1-20260302-1.2
      lot: L-22
      set-rpm: 200000.0
      cut-s: 12.5
      total-s: 20.0
      load-n: 1.2
      coolant-ml-per-min: 50.0
      mm3: dentine 0.3333333333333333
      mm3: enamel 3.25
      by: AB
      at: 2026-03-02T10:15:00Z
      corrects: 00000000-0000-0009-0000-00000000000a
      struck: no
      corrected-by: CD
      reason: back\\\\slash\\nnext line
      remark: too-fast 200000 160000
      remark: clock-ahead
      """;

  @Test
  void anEntryHasOneTextAndIsReadBackFromIt() {
    RecordEntry entry = Chain.EMPTY.link(STATEMENT, RECORDED);
    assertEquals(TEXT, CanonicalText.of(entry));
    assertEquals(entry, CanonicalText.entry(TEXT, entry.hash()));
  }

  @Test
  void theHashesAreThoseOfTheTextsAndHangOnTheOneBefore() {
    RecordEntry first = Chain.EMPTY.link(STATEMENT, RECORDED);
    assertEquals("5f447b96d1a998655624cd22501f839e147adb5dd34fcc82b62dcdca13221e14", first.hash());
    RecordEntry second = Chain.EMPTY.after(first).link(STATEMENT, RECORDED);
    assertEquals("c3dfc11d3765a5b5e6a1718a188bd1e0d52585e68c42beb78a5579f41b1fc2ac", second.hash());
  }

  @Test
  void aHandpieceStandsInTheTextAndAnEntryWithoutOneReadsAsBefore() {
    CutUse old = STATEMENT.use();
    CutUse.Piece turbine =
        new CutUse.Piece(
            new UsedInstrument(new UUID(11, 12), "T1", "turbine", new UUID(13, 14)),
            new Origin(new UUID(15, 16), "S1-20260301-2", "S1-20260301-2.1", ""));
    CutUse use =
        new CutUse(
            old.caseReference(),
            old.tooth(),
            old.step(),
            old.instrument(),
            turbine,
            old.origin(),
            old.cut(),
            old.by(),
            old.at());
    RecordEntry entry =
        Chain.EMPTY.link(
            new Statement(
                STATEMENT.id(),
                use,
                STATEMENT.correction(),
                List.of(new Remark(Remark.Kind.NOT_READY, List.of("used")).ofHandpiece())),
            RECORDED);
    String text = CanonicalText.of(entry);
    assertTrue(
        text.contains(
            """
            lot: L-22
            handpiece: 00000000-0000-000b-0000-00000000000c
            handpiece-label: T1
            handpiece-what: turbine
            handpiece-of: 00000000-0000-000d-0000-00000000000e
            handpiece-load: 00000000-0000-000f-0000-000000000010
            handpiece-load-name: S1-20260301-2
            handpiece-pouch: S1-20260301-2.1
            set-rpm: 200000.0
            """),
        text);
    assertTrue(text.endsWith("remark: handpiece not-ready used\n"), text);
    assertEquals(entry, CanonicalText.entry(text, entry.hash()));
    assertEquals(Remark.Kind.NOT_READY, entry.remarks().get(0).plain().kind());
    assertNull(CanonicalText.entry(TEXT, "").use().handpiece());
  }

  @Test
  void aTextThatIsNoEntryIsRefused() {
    for (String broken :
        List.of("", "kerfwright cut record 2\n", TEXT.replace("tooth: 16\n", ""), TEXT + "x\n")) {
      assertThrows(IllegalArgumentException.class, () -> CanonicalText.entry(broken, ""));
    }
  }

  @Test
  void figuresThatCannotBeAreRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> new Cut(null, 20.0, 10.0, null, null, Map.of()));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Cut(Double.NaN, null, null, null, null, Map.of()));
    assertThrows(
        IllegalArgumentException.class, () -> new Correction(new UUID(1, 1), true, "AB", " "));
  }
}
