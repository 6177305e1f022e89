package kerfwright.app.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SqliteDrawerTest extends DrawerContractTest {
  @TempDir Path folder;

  @Override
  Database open() throws Exception {
    return Database.file(folder.resolve("drawer test.db"));
  }

  @Test
  void everyConnectionIsSetToLoseNothing() throws Exception {
    try (Database database = open()) {
      assertEquals("wal", pragma(database, "journal_mode"));
      assertEquals("2", pragma(database, "synchronous"));
      assertEquals("1", pragma(database, "foreign_keys"));
      assertEquals("30000", pragma(database, "busy_timeout"));
    }
  }

  private static String pragma(Database database, String name) {
    return database
        .jdbi()
        .withHandle(handle -> handle.createQuery("PRAGMA " + name).mapTo(String.class).one());
  }
}
