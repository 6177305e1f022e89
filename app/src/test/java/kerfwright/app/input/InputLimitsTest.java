package kerfwright.app.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.file.FileSystem;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import kerfwright.app.Run;
import kerfwright.app.stocklist.ColumnMapping;
import kerfwright.app.stocklist.ListFile;
import kerfwright.app.stocklist.ListTable;
import kerfwright.app.stocklist.ListedRow;
import kerfwright.app.stocklist.RowMeaning;
import kerfwright.app.stocklist.UnreadableList;
import kerfwright.app.storage.StorageFault;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.quantity.Message;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Files that ask for too much, or hold what no file should, end in words and with exit code 2. */
@Timeout(value = 3, unit = TimeUnit.MINUTES)
class InputLimitsTest {
  private static final Path EXAMPLES = Path.of("../examples");

  @TempDir private Path folder;

  private Path file(String name, String text) throws Exception {
    return Files.writeString(folder.resolve(name), text);
  }

  private static Run refused(String... arguments) {
    Run run = Run.of(arguments);
    assertEquals(2, run.code(), run.err().lines().limit(3).toList().toString());
    return run;
  }

  private static String example(String name) throws Exception {
    return Files.readString(EXAMPLES.resolve(name));
  }

  @Test
  void seventyThousandUnknownFieldsAreToldInAHundred() throws Exception {
    StringBuilder text = new StringBuilder(example("access-natural-vital.yaml"));
    for (int i = 0; i < 70_000; i++) {
      text.append("k").append(i).append(": 1\n");
    }
    Run run = refused("plan", file("many.yaml", text.toString()).toString());
    assertEquals(101, run.err().lines().filter(line -> line.contains("many.yaml")).count());
    assertTrue(run.err().contains("more faults not shown"), run.err());
  }

  @Test
  void controlCharactersInADayFileAreTakenOut() throws Exception {
    String text = example("day-quiet.yaml").replaceFirst("\n", "\n\u0000\u0007");
    Path day = file("day.yaml", text);
    Run run = Run.of("day", day.toString(), "--seconds", "1", "--remedies", "0");
    assertEquals(0, run.code(), run.err());
  }

  private static String heat(String from, String to) throws Exception {
    String text =
        """
        radius_mm: 6
        layers:
          - {material: dentine, thickness_mm: 3}
        initial_c: 36
        bottom: insulated
        duration_s: 20
        output_every_s: 1
        top:
          spot_radius_mm: 1
          flux_w_per_m2: 100000
          on_s: 3
          off_s: 2
        probes_mm: [{r: 0, z: 1}]
        mesh: {cells_r: 40, cells_z: 60, step_s: 0.05}
        """;
    assertTrue(text.contains(from), from);
    return text.replace(from, to);
  }

  @Test
  void workIsCountedBeforeItIsBegun() throws Exception {
    Path sound = file("sound.yaml", heat("on_s: 3", "on_s: 3"));
    assertEquals(
        0, Run.of("heat", sound.toString()).code(), Run.of("heat", sound.toString()).err());
    long begun = System.nanoTime();
    Run fine =
        refused(
            "heat",
            file(
                    "fine.yaml",
                    heat(
                        "cells_r: 40, cells_z: 60, step_s: 0.05",
                        "cells_r: 400, cells_z: 600, step_s: 0.00001"))
                .toString());
    assertTrue(fine.err().contains("fewer cells or a longer step_s"), fine.err());
    Run short_ =
        refused(
            "heat",
            file("short.yaml", heat("on_s: 3\n  off_s: 2", "on_s: 1e-9\n  off_s: 0")).toString());
    assertTrue(short_.err().contains("strokes within duration_s"), short_.err());
    String day = example("day-quiet.yaml").replaceFirst("load_grid_min: \\d+", "load_grid_min: 1");
    Run many =
        refused(
            "day",
            file("many.yaml", day.replaceFirst("sterilisers: \\d+", "sterilisers: 200"))
                .toString());
    assertTrue(many.err().contains("possible starts of loads"), many.err());
    assertTrue(System.nanoTime() - begun < TimeUnit.SECONDS.toNanos(30));
  }

  private byte[] workbook(List<String> header, String number) throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "test", "1.0")) {
      Worksheet sheet = book.newWorksheet("one");
      for (int i = 0; i < header.size(); i++) {
        sheet.value(0, i, header.get(i));
        sheet.value(1, i, 77);
      }
    }
    Path file = Files.write(folder.resolve("a.xlsx"), bytes.toByteArray());
    try (FileSystem zip = FileSystems.newFileSystem(file)) {
      Path sheet = zip.getPath("xl/worksheets/sheet1.xml");
      String text = Files.readString(sheet);
      assertTrue(text.contains("<v>77</v>"), text);
      Files.writeString(sheet, text.replace("<v>77</v>", "<v>" + number + "</v>"));
    }
    return Files.readAllBytes(file);
  }

  @Test
  void absurdNumbersInAWorkbookAreFaultsOfTheirRows() throws Exception {
    List<String> header =
        List.of(example("drawer-demo.csv").lines().findFirst().orElseThrow().split(","));
    for (String number : List.of("1E999999999", "-1E-999999999", "1E308", "NaN", "1e", "٣")) {
      List<ListedRow> rows;
      try {
        ListTable table = ListFile.read("a.xlsx", workbook(header, number));
        rows =
            new RowMeaning(InstrumentState.QUARANTINE, UUID::randomUUID, Set.of())
                .read(table, ColumnMapping.guess(table.header()));
      } catch (UnreadableList told) {
        continue;
      }
      assertEquals(1, rows.size());
      assertTrue(rows.get(0).item() == null, number);
    }
  }

  @Test
  void theDiskOrFolderIsNamedAndNoFaultOfTheProgram() throws Exception {
    assertEquals(
        Optional.of(StorageFault.DISK_FULL),
        StorageFault.of(
            new IllegalStateException(
                new FileSystemException("/data/a", null, "No space left on device"))));
    assertEquals(
        Optional.of(StorageFault.DISK_FULL),
        StorageFault.of(
            new IllegalStateException(
                new org.sqlite.SQLiteException(
                    "[SQLITE_FULL] database or disk is full",
                    org.sqlite.SQLiteErrorCode.SQLITE_FULL))));
    assertEquals(Optional.empty(), StorageFault.of(new IllegalStateException("of ours")));
    Run run = Run.of("export", "/proc/none/a.zip", "--data", folder.toString());
    assertEquals(2, run.code(), run.err());
    Run.of("restore", "nothing.zip", "--data", folder.toString());
  }

  @Test
  void whatTakesTooLongIsStoppedAndTold() {
    BadInput late =
        assertThrows(
            BadInput.class,
            () ->
                TimeLimit.within(
                    Duration.ofMillis(50),
                    "case.yaml",
                    Message.of("command.plan-shorter"),
                    () -> {
                      Thread.sleep(60_000);
                      return 1;
                    }));
    assertTrue(late.getMessage().contains("was stopped; fewer instruments"), late.getMessage());
    BadInput told =
        assertThrows(
            BadInput.class,
            () ->
                TimeLimit.within(
                    Duration.ofSeconds(5),
                    "x",
                    Message.of("command.plan-shorter"),
                    () -> {
                      throw new BadInput("x", Message.of("fault.plain", "its own fault"));
                    }));
    assertTrue(told.getMessage().contains("its own fault"));
  }

  @Test
  void plainTextKeepsLinesAndTakesTheRestInEveryDisguise() {
    assertEquals(
        "a\tb\nc\r\nÖ", PlainText.of("a\tb\nc\r\n\u0000\u001b\u007f\u0085Ö".replace("\u0085", "")));
    assertEquals("a=1&b=%0A", PlainText.ofForm("a=1%00%1b%7F&b=%0A"));
    assertEquals("{\"a\":\"\\n\"}", PlainText.ofJson("{\"a\":\"\\u0000\\n\\u001B\"}"));
    assertEquals("{\"a\":\"\\\\u0000\"}", PlainText.ofJson("{\"a\":\"\\\\u0000\"}"));
  }
}
