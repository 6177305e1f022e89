package kerfwright.app.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import kerfwright.app.stocklist.ListTable;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Newest;
import kerfwright.app.storage.people.StoredSettings;
import kerfwright.app.storage.stock.StoredDrafts;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.app.today.ClockNotices;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A clock that ran a year ahead and was put right. */
class ClockAheadTest {
  private static final Instant NOON = Instant.parse("2026-11-25T12:30:00Z");
  private static final Clock NOW = Clock.fixed(NOON, ZoneOffset.UTC);
  private static final Clock AHEAD = Clock.offset(NOW, Duration.ofDays(365));

  @TempDir private Path folder;

  private Backups backups(Database database, Path to) {
    return new Backups(database, new StoredSettings(database), to, null, NOW);
  }

  @Test
  void backupsDatedInTheFutureStopNoneAndPushNoneOut() throws Exception {
    Path to = Files.createDirectory(folder.resolve("backups"));
    for (int day = 0; day < 30; day++) {
      Files.createFile(to.resolve(BackupFile.name(LocalDateTime.now(AHEAD).plusDays(day))));
    }
    LocalDateTime yesterday = LocalDateTime.now(NOW).minusDays(1);
    Files.createFile(to.resolve(BackupFile.name(yesterday)));
    try (Database database = Database.file(folder.resolve("a.db"));
        Backups backups = backups(database, to)) {
      assertEquals(Optional.empty(), backups.last());
      backups.tick();
      assertEquals(Optional.of(LocalDateTime.now(NOW)), backups.last());
      assertEquals(30, backups.ahead());
      assertTrue(Files.exists(to.resolve(BackupFile.name(yesterday))));
      assertEquals(Optional.empty(), backups.daysTooOld());
    }
  }

  @Test
  void anIdOfTheFutureIsFollowedByGreaterOnesAndADraftMadeNowIsKept() throws Exception {
    try (Database database = Database.file(folder.resolve("b.db"))) {
      TimeOrderedIds ahead = new TimeOrderedIds(AHEAD, new SplittableRandom(1));
      StoredDrafts drafts = new StoredDrafts(database, AHEAD);
      ListTable table = new ListTable(List.of("label"), List.of(), List.of());
      for (int i = 0; i < 10; i++) {
        drafts.keep(ahead.next(), "ahead", table);
      }
      TimeOrderedIds now = new TimeOrderedIds(NOW, new SplittableRandom(2));
      Newest.ids(database).forEach(now::after);
      UUID draft = now.next();
      drafts.keep(draft, "now", table);
      assertTrue(drafts.find(draft).isPresent());
    }
  }

  @Test
  void historyKeepsTheOrderItWasMadeInAndTodaySaysWhatIsAhead() throws Exception {
    try (Database database = Database.file(folder.resolve("c.db"))) {
      StoredDrawer drawer = new StoredDrawer(database);
      DrawerService then =
          new DrawerService(drawer, new TimeOrderedIds(AHEAD, new SplittableRandom(1)), AHEAD);
      StockItem item =
          StockItem.fresh(
              then.newId(),
              "A",
              new DrawerFields(
                  java.util.Map.of(
                      "iso", "806 314 197 534 014", "head_length_mm", "8", "max_rpm", "300000")));
      then.add(List.of(item), "");
      ClockNotices notices = new ClockNotices(() -> Newest.time(database), NOW);
      Say english = Say.in(Language.ENGLISH);
      assertTrue(notices.of(english).get(0).text().contains("25 Nov 2027"));
      TimeOrderedIds ids = new TimeOrderedIds(NOW, new SplittableRandom(2));
      Newest.ids(database).forEach(ids::after);
      DrawerService now = new DrawerService(drawer, ids, NOW);
      StockItem there = drawer.find(item.id()).orElseThrow();
      now.edit(new Pick(there.id(), there.version()), draft -> draft.place = "left", "");
      List<String> places = new ArrayList<>();
      for (DrawerEntry one : drawer.history(item.id())) {
        places.add(one.after().place());
      }
      assertEquals(List.of("", "left"), places);
      assertEquals(List.of(), notices.of(english));
    }
  }
}
