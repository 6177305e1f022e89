package kerfwright.app.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import kerfwright.app.Run;
import kerfwright.app.cli.ServeOptions;
import kerfwright.app.form.CellText;
import kerfwright.app.web.OpenPractice;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What leaves the practice's folder is locked, and what stays is its owner's alone. */
class LockedBackupTest {
  @TempDir private Path folder;
  private Path data;
  private Path outside;

  @BeforeEach
  void places() throws Exception {
    data = folder.resolve("data");
    outside = Files.createDirectory(folder.resolve("stick"));
  }

  private String backedUp(OpenPractice open) {
    open.settings()
        .write(open.settings().read().version(), Map.of("backup.folder", outside.toString()));
    open.backups().make();
    assertNull(open.backups().fault());
    return open.backups().key();
  }

  @Test
  void aBackupOutsideIsOpenedByItsKeyAloneAndTheDrillProvesIt() throws Exception {
    String key;
    Path backup;
    try (OpenPractice open = OpenPractice.of(new ServeOptions(true, 0, data))) {
      key = backedUp(open);
      backup = open.backups().files().get(0).file();
      assertEquals(outside, backup.getParent());
      assertEquals(key, open.backups().key(), "a key is made once");
    }
    assertTrue(key.matches("([A-Z2-9]{5}-){5}[A-Z2-9]{5}"), key);
    String bytes = Files.readString(backup, StandardCharsets.ISO_8859_1);
    assertFalse(bytes.contains("kerfwright-archive/1"));
    Run without = Run.of("restore", backup.toString(), "--drill");
    assertEquals(2, without.code());
    assertTrue(without.err().contains("is locked"), without.err());
    String other = (key.startsWith("A") ? "B" : "A") + key.substring(1);
    Run wrong = Run.of("restore", backup.toString(), "--drill", "--key", other);
    assertEquals(2, wrong.code(), wrong.err());
    Run right =
        Run.of(
            "restore", backup.toString(), "--drill", "--key", key.toLowerCase().replace("-", " "));
    assertEquals(0, right.code(), right.err());
    assertTrue(right.err().contains("can be restored"), right.err());
    Path into = folder.resolve("into");
    assertEquals(
        0, Run.of("restore", backup.toString(), "--data", into.toString(), "--key", key).code());
    assertEquals(0, Run.of("record", "verify", "--data", into.toString()).code());
  }

  @Test
  void foldersAndFilesAreTheirOwnersAlone() throws Exception {
    try (OpenPractice open = OpenPractice.of(new ServeOptions(true, 0, data))) {
      open.backups().make();
      try (var all = Files.walk(data)) {
        for (Path one : all.toList()) {
          assertEquals(
              Files.isDirectory(one) ? "rwx------" : "rw-------",
              PosixFilePermissions.toString(Files.getPosixFilePermissions(one)),
              one.toString());
        }
      }
    }
  }

  @Test
  void aPartLeftByAProcessThatWasEndedIsCleared() throws Exception {
    try (OpenPractice open = OpenPractice.of(new ServeOptions(true, 0, data))) {
      Path old = Files.createFile(outside.resolve("kerfwright-20260101-1300.zip.part"));
      Files.setLastModifiedTime(old, FileTime.from(Instant.now().minusSeconds(7200)));
      Path fresh = Files.createFile(outside.resolve("kerfwright-20260102-1300.zip.part"));
      Path other = Files.createFile(outside.resolve("letter.part"));
      backedUp(open);
      assertFalse(Files.exists(old));
      assertTrue(Files.exists(fresh) && Files.exists(other));
    }
  }

  @Test
  void backupsGoBelowAllowedFoldersOnlyAlsoThroughLinks() throws Exception {
    BackupRoots roots = new BackupRoots(List.of(outside));
    assertTrue(roots.allow(outside.resolve("new/deeper")));
    assertFalse(roots.allow(folder));
    assertFalse(roots.allow(outside.resolve("../elsewhere")));
    Files.createSymbolicLink(outside.resolve("link"), folder);
    assertFalse(roots.allow(outside.resolve("link/elsewhere")));
  }

  @Test
  void aCellThatASpreadsheetWouldComputeIsText() {
    for (String computed : List.of("=1+1", "+1", "-1", "@a", "\ta", "\ra")) {
      assertEquals("'" + computed, CellText.of(computed));
    }
    assertEquals("a=1", CellText.of("a=1"));
    assertEquals("", CellText.of(""));
  }
}
