package kerfwright.app.storage;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

class SqliteKeptCaseTest extends KeptCaseContractTest {
  @TempDir Path folder;

  @Override
  Database open() throws Exception {
    return Database.file(folder.resolve("cases.db"));
  }
}
