package kerfwright.practice.restock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.UUID;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.DrawerEntry.What;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.restock.ArticleNeed.Reason;
import org.junit.jupiter.api.Test;

class RestockingTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final Map<String, String> DIAMOND =
      Map.of("iso", "806 314 197 534 014", "head_length_mm", "8.0", "max_rpm", "450000");
  private static final Map<String, String> CARBIDE =
      Map.of("kind", "carbide", "us", "330", "shank", "FG", "blades", "6", "overall_mm", "19");
  private static final Restocking.Outlook NOTHING_MORE = outlook(Map.of(), 0, List.of());

  private int made;
  private final Map<UUID, List<DrawerEntry>> lines = new HashMap<>();

  private static Restocking.Outlook outlook(
      Map<UUID, LocalDate> expires, int planned, List<PurchaseRequest> requests) {
    return new Restocking.Outlook(
        TODAY.minusWeeks(20), expires, any -> planned, requests, any -> List.of(), ZoneOffset.UTC);
  }

  /** The same, with what was written of the items. */
  private Restocking.Outlook withLines(List<PurchaseRequest> requests) {
    return new Restocking.Outlook(
        TODAY.minusWeeks(20),
        Map.of(),
        any -> 0,
        requests,
        item -> lines.getOrDefault(item, List.of()),
        ZoneOffset.UTC);
  }

  private UUID line(What what, StockItem before, StockItem after, int daysAgo, UUID undoes) {
    UUID batch = new UUID(3, made++);
    Instant at = TODAY.minusDays(daysAgo).atTime(12, 0).toInstant(ZoneOffset.UTC);
    lines
        .computeIfAbsent(after.id(), any -> new ArrayList<>())
        .add(new DrawerEntry(new UUID(2, made++), batch, at, what, "", before, after, undoes));
    return batch;
  }

  /** A piece that came into the drawer that many days ago. */
  private StockItem piece(String label, String kind, String price, int daysAgo) {
    StockItem item =
        StockItem.fresh(new UUID(1, made++), label, new DrawerFields(Map.of("kind", kind)))
            .next(draft -> draft.price = price == null ? null : new BigDecimal(price));
    line(What.ADDED, null, item, daysAgo, null);
    return item;
  }

  private StockItem withdrawn(StockItem item, int daysAgo) {
    StockItem after = item.next(draft -> draft.state = InstrumentState.WITHDRAWN);
    line(What.MOVED, item, after, daysAgo, null);
    return after;
  }

  private RestockReport ofPieces(List<PurchaseRequest> requests, StockItem... items) {
    List<StockItem> all = List.of(items);
    return new Restocking(TODAY, RestockOptions.USUAL, any -> 1)
        .report(all, List.of(), withLines(requests));
  }

  @Test
  void aPieceWithoutAWearModelIsBoughtAgainWhenItLeavesWithTheLastPriceNoted() {
    RestockReport report =
        ofPieces(
            List.of(),
            withdrawn(piece("T1", "turbine", "600", 900), 5),
            withdrawn(piece("T2", "turbine", "640.50", 800), 3),
            piece("T3", "turbine", null, 700),
            withdrawn(piece("SP1", "spoon", null, 700), 10),
            piece("SP2", "spoon", null, 700),
            piece("H1", "holder", "9", 700));
    assertEquals(
        List.of("turbine", "spoon"), report.pieces().stream().map(PieceNeed::type).toList());
    PieceNeed turbine = report.pieces().get(0);
    assertEquals(2, turbine.order());
    assertEquals(1, turbine.here());
    assertEquals(List.of("T1", "T2"), turbine.gone());
    assertEquals(new BigDecimal("640.50"), turbine.price());
    assertEquals(new BigDecimal("1281.00"), turbine.cost());
    assertEquals(null, report.pieces().get(1).price());
    assertEquals(new BigDecimal("1281.00"), report.total());
    assertEquals(1, report.unpriced());
    assertEquals(2, report.toOrder());
  }

  @Test
  void whatLeftBeforeThePeriodOrWasReplacedSinceIsNotBoughtAgain() {
    StockItem longGone = withdrawn(piece("T1", "turbine", "600", 900), 92);
    assertEquals(List.of(), ofPieces(List.of(), longGone).pieces());
    StockItem gone = withdrawn(piece("T2", "turbine", "600", 900), 20);
    StockItem earlier = piece("T3", "turbine", "600", 30);
    assertEquals(1, ofPieces(List.of(), gone, earlier).pieces().get(0).order(), "came before");
    StockItem since = piece("T4", "turbine", "600", 10);
    assertEquals(List.of(), ofPieces(List.of(), gone, earlier, since).pieces());
    StockItem another = withdrawn(piece("T5", "turbine", "600", 900), 20);
    PieceNeed left = ofPieces(List.of(), gone, another, since).pieces().get(0);
    assertEquals(List.of(2, 1, 1), List.of(left.left(), left.added(), left.order()));
  }

  @Test
  void anAddingThatWasTakenBackReplacesNothing() {
    StockItem gone = withdrawn(piece("SP1", "spoon", null, 900), 20);
    StockItem lot = piece("SP2", "spoon", null, 900);
    StockItem more = lot.next(draft -> draft.pieces = 3);
    UUID batch = line(What.EDITED, lot, more, 10, null);
    assertEquals(List.of(), ofPieces(List.of(), gone, more).pieces());
    line(What.UNDONE, more, lot, 9, batch);
    assertEquals(1, ofPieces(List.of(), gone, lot).pieces().get(0).order());
  }

  @Test
  void whatADayLacksOfSuchPiecesHasALineAndItsPriceToo() {
    StockItem turbine = piece("T1", "turbine", "600", 900);
    List<PurchaseRequest> requests =
        List.of(
            new PurchaseRequest("turbine", TODAY, 2),
            new PurchaseRequest("holder", TODAY, 1),
            new PurchaseRequest("ceramic-round-010", TODAY, 1));
    RestockReport report = ofPieces(requests, turbine);
    assertEquals(new BigDecimal("1200"), report.total());
    assertEquals(
        List.of(2, 1, 1), report.pieces().stream().map(PieceNeed::order).toList(), "none left yet");
    assertEquals(List.of(requests.get(2)), report.pieces().get(2).requests());
    assertEquals(2, report.unpriced());
  }

  private StockItem item(String label, Map<String, String> fields, int pieces, int uses) {
    return StockItem.fresh(new UUID(1, made++), label, new DrawerFields(fields))
        .next(
            draft -> {
              draft.pieces = pieces;
              draft.uses = uses;
              draft.sterilisations = uses;
              draft.price = new BigDecimal("4.00");
            });
  }

  private static List<PastUse> uses(StockItem item, int each, int everyDays, double mm3) {
    List<PastUse> uses = new ArrayList<>();
    for (int day = 0; day < 91; day += everyDays) {
      for (int i = 0; i < each; i++) {
        uses.add(
            new PastUse(
                item.id(),
                TODAY.minusDays(day),
                "K" + day + "-" + i,
                "access-cavity",
                Map.of("enamel", mm3)));
      }
    }
    return uses;
  }

  private static RestockReport report(List<StockItem> items, List<PastUse> uses) {
    return new Restocking(TODAY, RestockOptions.USUAL, item -> 1).report(items, uses, NOTHING_MORE);
  }

  @Test
  void whatIsUsedMoreThanIsLeftIsOrderedUntilTheLifeCoversTheCautiousNeed() {
    StockItem item = item("D1", DIAMOND, 2, 0);
    RestockReport report = report(List.of(item), uses(item, 1, 1, 1));
    ArticleNeed need = report.needs().get(0);
    assertEquals(7, need.weeklyUses(), 0.01);
    assertEquals(28, need.need(), 0.05);
    assertEquals(28 + 1.645 * Math.sqrt(28), need.needHigh(), 0.1);
    double each = need.left()[1] / 2;
    double after = (2 + need.order()) * each;
    assertTrue(after >= need.needHigh() && after - each < need.needHigh(), need.toString());
    assertEquals(List.of(Reason.BELOW_NEED), need.reasons());
    assertEquals(new BigDecimal("4.00").multiply(BigDecimal.valueOf(need.order())), report.total());
    LocalDate[] out = need.wornOut();
    assertTrue(out[0].isBefore(out[1]) && out[1].isBefore(out[2]));
    assertEquals(TODAY.plusDays(Math.round(need.left()[1])), out[1]);
  }

  @Test
  void whatADayLacksIsOrderedThoughTheLifeWouldLast() {
    StockItem item = item("D1", DIAMOND, 100, 0);
    String type = kerfwright.practice.daylist.TypeName.of(item.properties());
    List<PurchaseRequest> requests =
        List.of(
            new PurchaseRequest(type, TODAY, 2),
            new PurchaseRequest(type, TODAY.plusDays(1), 3),
            new PurchaseRequest("ceramic-round-010", TODAY, 1));
    RestockReport report =
        new Restocking(TODAY, RestockOptions.USUAL, any -> 1)
            .report(List.of(item), uses(item, 1, 7, 1), outlook(Map.of(), 0, requests));
    ArticleNeed need = report.orders().get(0);
    assertEquals(3, need.order(), "as many as the day that lacks most");
    assertEquals(List.of(Reason.WISHED), need.reasons());
    assertEquals(2, need.requests().size());
    assertEquals(
        List.of(requests.get(2)), report.pieces().get(0).requests(), "nothing here is like it");
    assertEquals(2, report.toOrder());
  }

  @Test
  void whatIsPlentifulIsNotOrdered() {
    StockItem item = item("D1", DIAMOND, 100, 0);
    RestockReport report = report(List.of(item), uses(item, 1, 7, 1));
    assertEquals(0, report.needs().get(0).order());
    assertEquals(List.of(), report.orders());
    assertEquals(List.of(), report.needs().get(0).reasons());
  }

  @Test
  void aPieceForSingleUseCountsForOneUseAndAUsedOneForNone() {
    StockItem fresh = item("S1", DIAMOND, 10, 0).next(draft -> draft.singleUse = true);
    StockItem used =
        item("S2", DIAMOND, 1, 1)
            .next(
                draft -> {
                  draft.singleUse = true;
                  draft.state = InstrumentState.USED;
                });
    RestockReport report = report(List.of(fresh, used), uses(fresh, 1, 7, 1));
    ArticleNeed need = report.needs().get(0);
    assertEquals(10, need.left()[1], 1e-9);
    assertEquals(Math.max(0, Math.ceil(need.needHigh() - 10)), need.order(), 1e-9);
    assertEquals(4, need.need(), 0.01);
  }

  @Test
  void wornPiecesAreNamedAndDoNotCount() {
    StockItem worn = item("D1", DIAMOND, 1, 12);
    StockItem good = item("D2", DIAMOND, 1, 0);
    ArticleNeed need = report(List.of(worn, good), List.of()).needs().get(0);
    assertEquals(1, need.pieces());
    assertEquals(1, need.worn());
    assertEquals(List.of(Reason.WORN_OUT, Reason.UNUSED), need.reasons());
  }

  @Test
  void whatExpiresMeanwhileDoesNotCountAndDaysThatArePlannedDo() {
    StockItem item = item("D1", DIAMOND, 1, 0);
    Restocking restocking = new Restocking(TODAY, RestockOptions.USUAL, any -> 1);
    ArticleNeed expiring =
        restocking
            .report(
                List.of(item),
                List.of(),
                outlook(Map.of(item.id(), TODAY.plusDays(3)), 0, List.of()))
            .needs()
            .stream()
            .findFirst()
            .orElse(null);
    assertEquals(null, expiring, "nothing usable is left and nothing is asked for");
    ArticleNeed planned =
        restocking
            .report(
                List.of(item),
                List.of(),
                outlook(Map.of(item.id(), TODAY.plusDays(90)), 40, List.of()))
            .needs()
            .get(0);
    assertTrue(planned.order() > 0);
    assertEquals(40, planned.needHigh(), 40 + 1.645 * Math.sqrt(40));
  }

  @Test
  void loggedVolumeTellsMoreThanTheNumberOfUses() {
    // one life of a medium grain is 600 mm3 of enamel at the reference speed (GrainWear)
    StockItem light =
        item("D1", DIAMOND, 1, 3)
            .next(
                draft -> {
                  draft.sterilisations = 0;
                  draft.cutMm3ByMaterial.put("enamel", 6.0);
                });
    StockItem heavy = light.next(draft -> draft.cutMm3ByMaterial.put("enamel", 200.0));
    UsesLeft little = UsesLeft.of(heavy, 1);
    UsesLeft much = UsesLeft.of(light, 1);
    assertTrue(much.typical() > 5 * little.typical(), much + " " + little);
    assertTrue(UsesLeft.of(heavy, 2).typical() < little.typical());
    assertTrue(little.low() < little.typical() && little.typical() < little.high());
  }

  @Test
  void theLifeOfANewPieceIsFiveUsesButForTheSteriliser() {
    UsesLeft fresh = UsesLeft.of(item("B1", CARBIDE, 1, 0), 1);
    // a fifth of a life and what steam takes: 0.142, 0.067, 0.030, 0.013 of a life
    assertEquals(3.755, fresh.typical(), 1e-3);
    assertEquals(1 / 3.755, fresh.shareOfUse(), 1e-3);
  }

  @Test
  void steamTakesLessOfAPieceItHasReachedBefore() {
    StockItem twelve = item("B1", CARBIDE, 1, 0).next(draft -> draft.sterilisations = 12);
    double steam = -Math.log(0.75) / Math.log(3);
    assertEquals(5 * (1 - steam), UsesLeft.of(twelve, 1).typical(), 1e-3);
  }

  @Test
  void costsAreSharedByLifeAndVolume() {
    StockItem item = item("D1", DIAMOND, 1, 0).next(draft -> draft.singleUse = true);
    StockItem unpriced = item("D2", CARBIDE, 1, 0).next(draft -> draft.price = null);
    List<PastUse> uses =
        List.of(
            new PastUse(
                item.id(), TODAY, "K1", "access-cavity", Map.of("enamel", 1.0, "dentine", 3.0)),
            new PastUse(item.id(), TODAY, "K1", "access-cavity", Map.of("enamel", 2.0)),
            new PastUse(unpriced.id(), TODAY, "K1", "", Map.of("enamel", 9.0)));
    Costs costs = report(List.of(item, unpriced), uses).costs();
    assertEquals(2, costs.uses());
    assertEquals(1, costs.unpriced());
    assertEquals(List.of(new Costs.OfProcedure("access-cavity", 1, 8.0)), costs.byProcedure());
    assertEquals(
        List.of(
            new Costs.OfMaterial("dentine", 3.0, 3.0), new Costs.OfMaterial("enamel", 3.0, 5.0)),
        costs.byMaterial());
    assertEquals(5.0 / 3, costs.byMaterial().get(1).perMm3(), 1e-12);
  }

  @Test
  void theCautiousNeedHoldsInNineteenOfTwentyStretches() {
    // uses come by chance at a known rate; the rate is known, the stretch is not
    SplittableRandom chance = new SplittableRandom(4);
    double rate = 3;
    int held = 0;
    int rounds = 4000;
    double need = rate * 4;
    double high = need + 1.645 * Math.sqrt(need);
    for (int i = 0; i < rounds; i++) {
      int came = 0;
      for (double day = -Math.log(1 - chance.nextDouble()) / rate;
          day < 4;
          day -= Math.log(1 - chance.nextDouble()) / rate) {
        came++;
      }
      held += came <= high ? 1 : 0;
    }
    assertEquals(0.95, held / (double) rounds, 0.02);
  }
}
