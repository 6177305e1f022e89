package kerfwright.app.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import kerfwright.app.Run;
import kerfwright.app.cli.ServeOptions;
import kerfwright.app.input.BadInput;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Seal;
import kerfwright.app.storage.people.Trail;
import kerfwright.app.web.OpenPractice;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A trail whose last lines are cut off, together with its end, is noticed everywhere. */
class TrailSealTest {
  private static final Instant NOON = Instant.parse("2026-11-30T12:00:00Z");

  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void practiceWithATrail() throws Exception {
    file = folder.resolve(Database.FILE);
    try (OpenPractice open = OpenPractice.of(new ServeOptions(true, 0, folder))) {
      Trail trail = new Trail(open.database());
      for (int i = 1; i <= 3; i++) {
        trail.add(new Trail.Entry(NOON.plusSeconds(i), "AB", Trail.Act.SAW, "GET /records K-" + i));
      }
    }
  }

  private void sql(String... all) throws Exception {
    try (var connection = java.sql.DriverManager.getConnection("jdbc:sqlite:" + file);
        var statement = connection.createStatement()) {
      for (String one : all) {
        statement.executeUpdate(one);
      }
    }
  }

  private void cutTheTail() throws Exception {
    sql(
        "DELETE FROM trail WHERE number = 3",
        "UPDATE trail_end SET number = 2, hash = (SELECT hash FROM trail WHERE number = 2)");
  }

  private Run verify() {
    return Run.of("record", "verify", "--data", folder.toString());
  }

  private List<String> ill() throws Exception {
    return Checkup.of(folder, Clock.systemDefaultZone()).stream()
        .filter(one -> one.state() == Checkup.State.ILL)
        .map(Checkup.Finding::key)
        .toList();
  }

  @Test
  void theSealNamesTheEndOfTheTrail() throws Exception {
    assertEquals(3, Seal.in(folder).orElseThrow().trail().number());
    Run sound = verify();
    assertEquals(0, sound.code(), sound.err());
    assertTrue(sound.out().contains("Trail: 3 lines."), sound.out());
    assertFalse(ill().contains("doctor.seal-broken"));
  }

  @Test
  void aTailCutOffIsNoticedByVerifyByTheCheckupAndAtTheStart() throws Exception {
    cutTheTail();
    Run run = verify();
    assertEquals(1, run.code());
    assertTrue(run.err().contains("line 3 of the trail"), run.err());
    assertTrue(ill().contains("doctor.seal-broken"), ill().toString());
    Seal before = Seal.in(folder).orElseThrow();
    try (OpenPractice open = OpenPractice.of(new ServeOptions(false, 0, folder))) {
      assertEquals(Watch.Kind.OTHER_THAN_SEALED, open.watch().trouble().orElseThrow().kind());
    }
    assertEquals(before, Seal.in(folder).orElseThrow(), "the seal was overwritten");
  }

  @Test
  void aLineChangedOrAnEndTakenAwayIsABrokenChain() throws Exception {
    for (String change :
        List.of(
            "UPDATE trail SET who = 'ZZ' WHERE number = 2",
            "UPDATE trail SET line = replace(line, 'K-3', 'K-4') WHERE number = 3",
            "DELETE FROM trail_end")) {
      byte[] whole = Files.readAllBytes(file);
      sql(change);
      Run run = verify();
      assertEquals(1, run.code(), change);
      assertTrue(run.err().contains("the chain of the trail breaks"), change + run.err());
      Files.write(file, whole);
    }
  }

  @Test
  void aSealFromBeforeTheTrailWasNamedSaysNothingOfIt() throws Exception {
    Path seal = folder.resolve(Seal.FILE);
    Files.writeString(seal, Files.readString(seal).replaceAll("trail .*\n", ""));
    cutTheTail();
    assertEquals(0, verify().code());
  }

  @Test
  void anArchiveWhoseTrailEndsBeforeItsSealIsNotRestored() throws Exception {
    Path whole = folder.resolve("whole.zip");
    Path cut = folder.resolve("cut.zip");
    try (Database database = Database.file(file)) {
      Archive.write(database, whole, NOON);
    }
    cutTheTail();
    try (Database database = Database.file(file)) {
      Archive.write(database, cut, NOON);
    }
    sealedAs(cut, whole);
    Path into = folder.resolve("into.db");
    BadInput refused =
        assertThrows(
            BadInput.class, () -> Restoration.of(cut, null, schema -> Database.file(into, schema)));
    assertTrue(refused.getMessage().contains("changed outside this program"), refused.getMessage());
    Path kept = folder.resolve("kept.db");
    Restoration.of(whole, null, schema -> Database.file(kept, schema));
    try (Database database = Database.file(kept)) {
      assertEquals(3, Seal.of(database).trail().number());
    }
  }

  /** Gives an archive the seal of another. */
  private static void sealedAs(Path archive, Path other) throws Exception {
    String seal = manifest(other).replaceAll("(?s).*(\"seal\" : \"[^\"]*\").*", "$1");
    String changed = manifest(archive).replaceAll("\"seal\" : \"[^\"]*\"", "");
    try (FileSystem zip = FileSystems.newFileSystem(archive)) {
      Files.writeString(
          zip.getPath(Manifest.FILE),
          changed.replaceFirst(
              "(\"madeAt\" : \"[^\"]*\",)\\s*,",
              "$1" + java.util.regex.Matcher.quoteReplacement(seal) + ","));
    }
  }

  private static String manifest(Path archive) throws Exception {
    try (FileSystem zip = FileSystems.newFileSystem(archive)) {
      return Files.readString(zip.getPath(Manifest.FILE));
    }
  }
}
