package kerfwright.app.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import kerfwright.app.Run;
import kerfwright.app.web.OpenPractice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordCommandTest {
  @TempDir private Path folder;

  private Run verify(String... more) {
    String[] all = new String[4 + more.length];
    System.arraycopy(new String[] {"record", "verify", "--data", folder.toString()}, 0, all, 0, 4);
    System.arraycopy(more, 0, all, 4, more.length);
    return Run.of(all);
  }

  private void demo() throws Exception {
    OpenPractice.of(new ServeOptions(true, 0, folder)).close();
  }

  private void tamper(String sql) throws SQLException {
    try (var connection =
            DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("kerfwright.db"));
        var statement = connection.createStatement()) {
      assertEquals(1, statement.executeUpdate(sql));
    }
  }

  @Test
  void aSoundChainIsTalliedAndItsEndCanBeNoted() throws Exception {
    demo();
    Run run = verify();
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().startsWith("The chain holds: 7 entries.\n"), run.out());
    String noted = run.out().substring(run.out().lastIndexOf(' ') + 1).strip();
    assertEquals(0, verify("--noted", noted).code());
    Run other = verify("--noted", "3:" + noted.substring(2));
    assertEquals(1, other.code());
    assertTrue(other.err().contains("entry 3 does not have the hash that was noted"), other.err());
  }

  @Test
  void itIsSaidWhereTheChainBreaks() throws Exception {
    demo();
    tamper(
        "UPDATE cut_record SET entry = replace(entry, 'tooth: 36', 'tooth: 37') WHERE number = 3");
    Run run = verify();
    assertEquals(1, run.code());
    assertTrue(run.err().contains("the chain breaks: entry 3 was changed"), run.err());
    assertEquals("", run.out());
  }

  @Test
  void badArgumentsMakeNoDatabase() throws Exception {
    assertEquals(2, verify().code());
    assertEquals(2, Run.of("record", "verify").code());
    assertEquals(2, Run.of("record", "alter", "--data", folder.toString()).code());
    assertEquals(2, verify("--noted", "x").code());
    try (var files = Files.list(folder)) {
      assertEquals(0, files.count());
    }
  }
}
