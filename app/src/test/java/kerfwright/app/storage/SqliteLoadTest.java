package kerfwright.app.storage;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

class SqliteLoadTest extends LoadContractTest {
  @TempDir Path folder;

  @Override
  Database open() throws Exception {
    return Database.file(folder.resolve("load.db"));
  }

  @Override
  Database again() throws Exception {
    return open();
  }
}
