package kerfwright.app.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import kerfwright.app.storage.stock.Packages;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;
import kerfwright.practice.label.MakersCode;
import kerfwright.practice.label.PackageMark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What every storage of makers' codes keeps to. */
class PackagesContractTest {
  private static final String GTIN = "09501101530003";
  private static final MakersCode FULL =
      new MakersCode(GTIN, "L/1", "S\"1", LocalDate.of(2025, 1, 2), LocalDate.of(2030, 2, 28), "ä");
  private static final MakersCode BARE = new MakersCode(GTIN, "L2", null, null, null, null);

  @TempDir private Path folder;

  @Test
  void sqliteKeepsThem() throws Exception {
    try (Database database = Database.file(folder.resolve("a.db"))) {
      keepsThem(database);
    }
  }

  @Test
  void postgresKeepsThem() throws Exception {
    try (Database database = Database.server(PostgresOfTests.newDatabase())) {
      keepsThem(database);
    }
  }

  private static void keepsThem(Database database) {
    DrawerService service =
        new DrawerService(
            new StoredDrawer(database),
            new TimeOrderedIds(Clock.systemUTC(), new SplittableRandom(5)),
            Clock.systemUTC());
    StockItem one = item(service, "D1");
    StockItem two = item(service, "D2");
    assertTrue(service.add(List.of(one), "").done());
    var undone = service.add(List.of(two), "").batch();
    Packages packages = new Packages(database);
    assertEquals(Optional.empty(), packages.of(one.id()));
    assertTrue(packages.put(one.id(), 0, FULL));
    assertEquals(Optional.of(new PackageMark(one.id(), 1, FULL)), packages.of(one.id()));
    assertFalse(packages.put(one.id(), 0, BARE), "somebody else was quicker");
    assertTrue(packages.put(one.id(), 1, BARE));
    assertFalse(packages.put(one.id(), 1, FULL), "changed since");
    assertEquals(Optional.of(new PackageMark(one.id(), 2, BARE)), packages.of(one.id()));
    assertEquals(Map.of(), packages.expiries());
    assertTrue(packages.put(two.id(), 0, FULL));
    assertEquals(Map.of(two.id(), LocalDate.of(2030, 2, 28)), packages.expiries());
    assertEquals(2, packages.withGtin(GTIN).size());
    assertEquals(List.of(), packages.withGtin("00000000000000"));
    assertTrue(service.undo(undone, "").done());
    assertEquals(
        List.of(one.id()), packages.withGtin(GTIN).stream().map(PackageMark::item).toList());
    assertEquals(one.id(), service.drawer().labelled("D1").orElseThrow().id());
    assertEquals(Optional.empty(), service.drawer().labelled("D2"), "taken out again");
  }

  private static StockItem item(DrawerService service, String label) {
    return StockItem.fresh(
        service.newId(),
        label,
        new DrawerFields(Map.of("iso", "806 314 197 534 014", "head_length_mm", "8.0")));
  }
}
