package kerfwright.app.storage;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

class SqliteLessonsTest extends LessonsContractTest {
  @TempDir Path folder;

  @Override
  Database open() throws Exception {
    return Database.file(folder.resolve("lessons.db"));
  }
}
