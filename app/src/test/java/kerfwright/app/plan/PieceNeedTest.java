package kerfwright.app.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseFile;
import kerfwright.app.input.BadInput;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.planner.PlanOptions;
import kerfwright.planner.plan.CutPlan;
import kerfwright.practice.daylist.PieceCount;
import kerfwright.practice.daylist.PieceNeed;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PieceNeedTest {
  private static CutPlan plan(String example) throws BadInput {
    Wiring wiring = Wiring.production();
    return wiring
        .plans()
        .plan(
            new CaseFile(wiring.cases()).read(Path.of("../examples/" + example + ".yaml")),
            wiring.demoDrawer().read(),
            new PlanOptions(2, 1));
  }

  @Test
  void aPlanNeedsItsHandpiecesAndTheToolsOfItsCues() throws BadInput {
    CutPlan plan = plan("sectioning-zirconia");
    List<PieceNeed> needs = PieceNeed.of(plan);
    Set<String> handpieces =
        plan.steps().stream().map(step -> step.handpiece().id()).collect(Collectors.toSet());
    assertFalse(handpieces.isEmpty());
    for (String id : handpieces) {
      assertTrue(needs.contains(new PieceNeed(List.of(id), false)), id);
    }
    assertTrue(needs.contains(new PieceNeed(List.of("flat-lever"), false)), needs.toString());
    assertTrue(
        needs.stream()
            .anyMatch(one -> one.anyOf().equals(List.of("ultrasonic-tip", "hand-instrument"))));
    assertEquals(handpieces.size() + 2, needs.size(), needs.toString());
  }

  @Test
  void whatOnePlanMayNeedAndAnotherDoesNeedIsNeeded() {
    PieceNeed maybe = new PieceNeed(List.of("spoon"), true);
    PieceNeed sure = new PieceNeed(List.of("spoon"), false);
    assertEquals(List.of(sure), PieceNeed.tray(List.of(List.of(maybe), List.of(sure))));
    assertEquals(List.of(maybe), PieceNeed.tray(List.of(List.of(maybe), List.of(maybe))));
  }

  @Test
  void countsWhatIsReadyOfAnyKindThatServes(@TempDir Path folder) throws Exception {
    Files.createDirectories(folder);
    try (Database database = Database.temporary(folder.resolve(Database.FILE))) {
      DrawerService service =
          new DrawerService(
              new StoredDrawer(database),
              new TimeOrderedIds(Clock.systemUTC(), new SplittableRandom(5)),
              Clock.systemUTC());
      StockItem spoon = piece(service, "SP1", "spoon");
      piece(service, "EX1", "excavator");
      piece(service, "TU1", "turbine");
      PieceNeed either = new PieceNeed(List.of("spoon", "excavator"), false);
      PieceNeed tip = new PieceNeed(List.of("ultrasonic-tip"), false);
      List<List<PieceNeed>> day = List.of(List.of(either, tip), List.of(either));
      assertEquals(
          List.of(new PieceCount(either, 2, 2), new PieceCount(tip, 1, 0)),
          PieceCount.of(day, service.drawer()));
      assertTrue(service.move(List.of(new Pick(spoon.id(), 1)), InstrumentState.USED, "").done());
      List<PieceCount> after = PieceCount.of(day, service.drawer());
      assertEquals(1, after.get(0).clean());
      assertFalse(after.get(0).none());
      assertTrue(after.get(1).lacking());
      assertFalse(new PieceCount(new PieceNeed(List.of("strip"), true), 1, 0).lacking());
    }
  }

  private static StockItem piece(DrawerService service, String label, String kind) {
    StockItem item =
        StockItem.fresh(service.newId(), label, new DrawerFields(Map.of("kind", kind)));
    assertTrue(service.add(List.of(item), "").done());
    return item;
  }
}
