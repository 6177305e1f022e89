package kerfwright.app.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.zip.GZIPInputStream;
import kerfwright.app.input.BadInput;
import kerfwright.app.storage.Chains;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Snapshot;
import kerfwright.app.storage.cases.StoredRecord;
import kerfwright.app.storage.people.Accounts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A practice as version 0.1.0 kept it, schema 70, made by {@code serve --demo --data} of that
 * version: it is brought up to date, and a backup made before it goes back.
 */
class OldDatabaseTest {
  private static final String OLD = "/kerfwright/app/storage/practice-of-schema-70.db.gz";
  private static final String ITS_SCHEMA = "70";

  @TempDir private Path folder;

  private Path old() throws IOException {
    Path file = folder.resolve("old.db");
    try (InputStream in = new GZIPInputStream(OldDatabaseTest.class.getResourceAsStream(OLD))) {
      Files.copy(in, file);
    }
    return file;
  }

  @Test
  void isBroughtUpToDateWithAllItHolds() throws Exception {
    Path file = old();
    try (Database now = Database.file(file)) {
      assertEquals(7, new StoredRecord(now).end().number());
      assertEquals(126, items(now));
      assertTrue(Chains.of(now).hold());
      assertEquals(List.of(), new Accounts(now).all());
      assertEquals(List.of(), now.damage());
    }
    // and opens once more
    Database.file(file).close();
  }

  private static long items(Database database) throws IOException {
    try (Snapshot snapshot = Snapshot.of(database)) {
      long[] rows = {0};
      snapshot.rows(
          snapshot.tables().stream()
              .filter(one -> one.name().equals("stock_item"))
              .findFirst()
              .orElseThrow(),
          row -> rows[0]++);
      return rows[0];
    }
  }

  @Test
  void aBackupFromBeforeTheUpgradeGoesBackToTheOldSchema() throws Exception {
    Path file = old();
    Path backup = folder.resolve("before.zip");
    List<String> before;
    try (Database database = Database.file(file, ITS_SCHEMA);
        Snapshot snapshot = Snapshot.of(database)) {
      before = Archive.sums(snapshot);
      Archive.write(database, backup, Instant.parse("2026-11-30T12:00:00Z"));
    }
    Database.file(file).close();
    Path back = folder.resolve("back.db");
    Manifest manifest = Restoration.of(backup, null, schema -> Database.file(back, schema));
    assertEquals(ITS_SCHEMA, manifest.schema());
    try (Database database = Database.file(back, ITS_SCHEMA);
        Snapshot snapshot = Snapshot.of(database)) {
      assertEquals(ITS_SCHEMA, snapshot.schema());
      assertEquals(before, Archive.sums(snapshot));
    }
  }

  /** What passes with the day is neither in a backup nor in an export. */
  @Test
  void noSessionGoesIntoABackup() throws Exception {
    try (Database now = Database.file(old());
        Snapshot snapshot = Snapshot.of(now)) {
      assertTrue(snapshot.tables().stream().anyMatch(one -> one.name().equals("person_account")));
      assertFalse(snapshot.tables().stream().anyMatch(one -> one.name().startsWith("passing_")));
    }
  }

  /** Nothing is put over a practice that is there. */
  @Test
  void aBackupIsNotPutOverAPracticeThatIsThere() throws Exception {
    Path backup = folder.resolve("over.zip");
    Path file = old();
    try (Database database = Database.file(file, ITS_SCHEMA)) {
      Archive.write(database, backup, Instant.parse("2026-11-30T12:00:00Z"));
    }
    assertThrows(
        BadInput.class, () -> Restoration.of(backup, null, schema -> Database.file(file, schema)));
  }
}
