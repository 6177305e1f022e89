package kerfwright.app.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import kerfwright.app.Run;
import kerfwright.app.cli.ServeOptions;
import kerfwright.app.storage.Database;
import kerfwright.app.web.OpenPractice;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The look over a practice names what is ill, and nothing that is well. */
class DoctorTest {
  @TempDir private Path folder;

  @BeforeEach
  void practice() throws Exception {
    try (OpenPractice open = OpenPractice.of(new ServeOptions(true, 0, folder))) {
      open.backups().make();
    }
  }

  private List<String> ill(Clock clock) throws Exception {
    return Checkup.of(folder, clock).stream()
        .filter(one -> one.state() == Checkup.State.ILL)
        .map(Checkup.Finding::key)
        // the disk of whoever builds may be small
        .filter(key -> !key.equals("doctor.little-room"))
        .toList();
  }

  @Test
  void aPracticeThatIsWellIsToldSoInBothLanguagesAndLeftAsItIs() throws Exception {
    byte[] before = Files.readAllBytes(folder.resolve(Database.FILE));
    assertEquals(List.of(), ill(Clock.systemDefaultZone()));
    Run english = Run.of("doctor", "--data", folder.toString());
    assertTrue(english.out().contains("All chains hold: 7 entries"), english.out());
    Run german = Run.of("doctor", "--data", folder.toString(), "--language", "de");
    assertTrue(german.out().contains("Alle Ketten halten: 7 Einträge"), german.out());
    assertEquals(2, Run.of("doctor", "--data", folder.toString(), "--language", "x").code());
    org.junit.jupiter.api.Assertions.assertArrayEquals(
        before, Files.readAllBytes(folder.resolve(Database.FILE)));
  }

  @Test
  void clockBackupChainAndFileAreFoundIll() throws Exception {
    Clock now = Clock.systemDefaultZone();
    assertEquals(
        List.of("doctor.clock-wrong", "doctor.no-backup"),
        ill(Clock.offset(now, Duration.ofDays(-9))));
    assertEquals(List.of("doctor.backup-old"), ill(Clock.offset(now, Duration.ofDays(9))));
    try (var connection =
            java.sql.DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(Database.FILE));
        var statement = connection.createStatement()) {
      statement.executeUpdate("DELETE FROM cut_record WHERE number = 7");
    }
    assertEquals(List.of("doctor.chain-broken", "doctor.seal-broken"), ill(now));
    Files.delete(folder.resolve(Database.FILE));
    assertEquals(List.of("doctor.closed"), ill(now));
    assertEquals(1, Run.of("doctor", "--data", folder.toString()).code());
  }

  @Test
  void aFolderThatIsMissingIsNoFolderThatCannotBeWritten() throws Exception {
    Path missing = folder.resolve("mistyped");
    Run english = Run.of("doctor", "--data", missing.toString());
    assertEquals(1, english.code());
    assertTrue(english.out().contains(missing + " is missing. Give the folder"), english.out());
    Run german = Run.of("doctor", "--data", missing.toString(), "--language", "de");
    assertTrue(german.out().contains(missing + " fehlt. Den Ordner der Praxis"), german.out());
    assertEquals(
        List.of("doctor.folder-missing"),
        Checkup.of(missing, Clock.systemDefaultZone()).stream()
            .filter(one -> one.state() == Checkup.State.ILL)
            .map(Checkup.Finding::key)
            .toList());
    assertTrue(Files.notExists(missing), "it was made");
  }
}
