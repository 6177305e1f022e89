package kerfwright.app.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import kerfwright.app.Run;
import kerfwright.app.cli.ServeOptions;
import kerfwright.app.input.BadInput;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Seal;
import kerfwright.app.web.OpenPractice;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A practice's file that is lost, older, damaged or taken away is noticed and told. */
class WatchTest {
  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void practice() throws Exception {
    file = folder.resolve(Database.FILE);
    OpenPractice.of(new ServeOptions(true, 0, folder)).close();
  }

  private OpenPractice open() throws BadInput {
    return OpenPractice.of(new ServeOptions(false, 0, folder));
  }

  private Run verify() {
    return Run.of("record", "verify", "--data", folder.toString());
  }

  private static void sql(Path file, String... all) throws Exception {
    try (var connection = java.sql.DriverManager.getConnection("jdbc:sqlite:" + file);
        var statement = connection.createStatement()) {
      for (String one : all) {
        statement.executeUpdate(one);
      }
    }
  }

  private static long number(Path folder) throws Exception {
    try (var files = Files.list(folder)) {
      return files.count();
    }
  }

  @Test
  void theSealBesideAPracticeNamesItsLastEntry() throws Exception {
    Seal seal = Seal.in(folder).orElseThrow();
    assertEquals(7, seal.record().number());
    assertTrue(seal.ledger().number() > 100, seal.text());
    assertEquals(0, verify().code(), verify().err());
    try (OpenPractice open = open()) {
      assertTrue(open.watch().trouble().isEmpty());
    }
  }

  @Test
  void aTailCutOffTogetherWithItsEndIsNoticedAtTheStartAndByVerify() throws Exception {
    sql(
        file,
        "DELETE FROM cut_record WHERE number = 7",
        "UPDATE cut_record_end SET number = 6,"
            + " hash = (SELECT hash FROM cut_record WHERE number = 6)");
    Run run = verify();
    assertEquals(1, run.code());
    assertTrue(run.err().contains("names entry 7 of the record"), run.err());
    Seal before = Seal.in(folder).orElseThrow();
    try (OpenPractice open = open()) {
      assertEquals(Watch.Kind.OTHER_THAN_SEALED, open.watch().trouble().orElseThrow().kind());
      assertFalse(open.watch().stopped());
    }
    assertEquals(before, Seal.in(folder).orElseThrow(), "the seal was overwritten");
  }

  @Test
  void aDatabaseThatIsGoneIsNotMadeAnew() throws Exception {
    Files.delete(file);
    BadInput gone = assertThrows(BadInput.class, this::open);
    assertTrue(gone.getMessage().contains("names 7 entries"), gone.getMessage());
    assertFalse(Files.exists(file));
  }

  @Test
  void verifyWritesNothing() throws Exception {
    sql(
        file,
        "DROP TABLE ledger",
        "DROP TABLE ledger_end",
        "DELETE FROM flyway_schema_history WHERE version = '60'");
    byte[] before = Files.readAllBytes(file);
    Run run = verify();
    assertEquals(1, run.code(), "the seal names a ledger that is not there");
    org.junit.jupiter.api.Assertions.assertArrayEquals(before, Files.readAllBytes(file));
  }

  @Test
  void movesAndLoadsChangedPastTheProgramAreFound() throws Exception {
    String[][] changes = {
      {"UPDATE stock_entry SET note = 'x' WHERE id = (SELECT max(id) FROM stock_entry)"},
      {"DELETE FROM stock_entry WHERE id = (SELECT max(id) FROM stock_entry)"},
      {"UPDATE steriliser_load SET state = 'RELEASED' WHERE state = 'RUNNING'"},
      {"UPDATE ledger SET line = replace(line, 'a', 'b') WHERE number = 5"},
      {"DELETE FROM ledger WHERE number = 5"},
      {"DELETE FROM ledger WHERE number = (SELECT max(number) FROM ledger)"},
    };
    Path sound = Files.copy(file, folder.resolve("sound"));
    for (String[] change : changes) {
      Files.copy(sound, file, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
      assertEquals(0, verify().code());
      sql(file, change);
      Run run = verify();
      assertEquals(1, run.code(), change[0]);
      assertTrue(run.err().contains("chain of drawer and loads breaks"), change[0] + run.err());
    }
  }

  @Test
  void anEndThatStandsTwiceIsDamage() throws Exception {
    sql(file, "INSERT INTO cut_record_end SELECT 2, number, hash FROM cut_record_end");
    assertEquals(1, verify().code());
    try (OpenPractice open = open()) {
      assertTrue(open.watch().stopped());
    }
  }

  @Test
  void anArchiveWhoseRecordWasChangedIsNotRestored() throws Exception {
    Path archive = folder.resolve("a.zip");
    sql(file, "UPDATE cut_record SET entry = replace(entry, 'tooth: 36', 'tooth: 37')");
    try (Database database = Database.file(file)) {
      Archive.write(database, archive, Instant.EPOCH);
    }
    Path into = folder.resolve("into");
    Run run = Run.of("restore", archive.toString(), "--data", into.toString());
    assertEquals(2, run.code());
    assertTrue(run.err().contains("nothing was restored"), run.err());
    try (Database database = Database.reading(into.resolve(Database.FILE))) {
      assertEquals(0, Seal.of(database).record().number());
    }
  }

  @Test
  void aFileTakenAwayWhileItRunsStopsWriting() throws Exception {
    try (OpenPractice open = open()) {
      Watch watch = open.watch();
      watch.look();
      assertTrue(watch.trouble().isEmpty());
      Path aside = folder.resolve("aside");
      Files.move(file, aside);
      watch.look();
      assertEquals(Watch.Kind.GONE, watch.trouble().orElseThrow().kind());
      assertTrue(watch.stopped());
      Files.copy(aside, file);
      watch.look();
      assertTrue(watch.stopped(), "a copy is another file");
    }
  }

  @Test
  void damageIsFoundToldWithTheLastBackupAndPushesNoBackupOut() throws Exception {
    Path backups = folder.resolve("backups");
    try (OpenPractice open = open()) {
      open.backups().make();
      assertNull(open.backups().fault());
    }
    long before = number(backups);
    try (RandomAccessFile raw = new RandomAccessFile(file.toFile(), "rw")) {
      for (long at = 4096 * 3; at < raw.length(); at += 4096) {
        raw.seek(at);
        raw.write(new byte[64]);
      }
    }
    BadInput damaged = null;
    try (OpenPractice open = open()) {
      assertFalse(open.watch().lookForDamage().isEmpty());
      assertTrue(open.watch().stopped());
      open.backups().make();
      assertEquals("backup.not-sound", open.backups().fault().key());
    } catch (BadInput told) {
      damaged = told;
    }
    if (damaged != null) {
      List<String> lines =
          damaged.faults().stream().map(one -> one.in(Say.in(Language.ENGLISH))).toList();
      assertTrue(lines.toString().contains("kerfwright restore " + backups), lines.toString());
    }
    assertEquals(before, number(backups));
  }
}
