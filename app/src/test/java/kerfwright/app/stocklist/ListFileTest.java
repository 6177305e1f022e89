package kerfwright.app.stocklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.practice.drawer.InstrumentState;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ListFileTest {
  private static final Say SAY = Say.in(Language.ENGLISH);

  private static String words(ListedRow row) {
    return String.join(
        "; ",
        Stream.concat(
                row.problems().stream().map(one -> one.in(SAY)), row.doubts().stream().map(SAY::of))
            .toList());
  }

  private static ListTable read(String text) throws UnreadableList {
    return ListFile.read("list.csv", text.getBytes(StandardCharsets.UTF_8));
  }

  private static List<ListedRow> understood(ListTable table) {
    return new RowMeaning(InstrumentState.QUARANTINE, UUID::randomUUID, Set.of("TAKEN"))
        .read(table, ColumnMapping.guess(table.header()));
  }

  private static String refusal(byte[] bytes) {
    UnreadableList bad = assertThrows(UnreadableList.class, () -> ListFile.read("list", bytes));
    return bad.in(SAY);
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t"})
  void everyUsualDelimiterIsReadAndColumnsAreGuessed(String sign) throws UnreadableList {
    String text =
        "\uFEFFLabel,ISO number,Max speed,Head length,Cabinet\r\n"
            + "A1,806314197534014,450000,8.0,\"upper, left\"\r\n\r\n"
            + "A2,806 314 197 534 014,,8.0,\r\n";
    String own = text.replace("\"upper, left\"", "upper").replace(",", sign);
    List<ListedRow> rows = understood(read(own));
    assertEquals(2, rows.size());
    assertTrue(rows.get(0).understood(), words(rows.get(0)));
    assertEquals("upper", rows.get(0).item().place());
    assertEquals(InstrumentState.QUARANTINE, rows.get(0).item().state());
    assertTrue(words(rows.get(1)).contains("never used in plans"));
    assertEquals(4, rows.get(1).line());
  }

  @Test
  void aHandpieceIsReadByItsKindAloneAndTakesNoFieldOfARotaryInstrument() throws UnreadableList {
    List<ListedRow> rows =
        understood(
            read(
                "id,kind,max_rpm,state\nT1,Turbine,,clean\nT2,turbine,400000,clean\n"
                    + "T3,turbin,,clean\n"));
    assertEquals("turbine", rows.get(0).item().pieceKind().orElseThrow().id());
    assertEquals("", words(rows.get(0)));
    assertTrue(words(rows.get(1)).contains("rotary instruments only"), words(rows.get(1)));
    assertTrue(!rows.get(1).understood() && !rows.get(2).understood());
  }

  @Test
  void aDoubtfulRowSaysWhatStandsAgainstIt() throws UnreadableList {
    List<ListedRow> rows =
        understood(
            read(
                "id,kind,us,blades,overall_mm,shank,state,price,single_use,uses\n"
                    + "TAKEN,carbide,330,6,19,FG,clean,,,\n"
                    + "B1,carbide,99999,6,19,FG,clean,,,\n"
                    + "B2,carbide,330,6,19,FG,shiny,cheap,perhaps,-1\n"
                    + "B3,carbide,330,6,19,FG,clean,,yes,2\n"
                    + "B4,carbide,330,6,19,FG,in-reprocessing,1.5,,\n"));
    assertTrue(words(rows.get(0)).contains("already"));
    assertTrue(words(rows.get(1)).contains("99999"));
    assertEquals(4, rows.get(2).problems().size(), words(rows.get(2)));
    assertTrue(words(rows.get(3)).contains("cannot be clean"));
    assertEquals(InstrumentState.CLEANING, rows.get(4).item().state());
  }

  @Test
  void aWorkbookMeansTheSameAsItsText() throws IOException, UnreadableList {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "test", "1.0")) {
      Worksheet sheet = book.newWorksheet("list");
      String[] header = {"id", "iso", "head_length_mm", "max_rpm", "state"};
      for (int i = 0; i < header.length; i++) {
        sheet.value(0, i, header[i]);
      }
      sheet.value(1, 0, "A1");
      sheet.value(1, 1, 806314197534014L);
      sheet.value(1, 2, 8.0);
      sheet.value(1, 3, 450000);
      sheet.value(1, 4, "clean");
    }
    ListTable fromBook = ListFile.read("list.xlsx", bytes.toByteArray());
    assertEquals(
        read("id,iso,head_length_mm,max_rpm,state\nA1,806314197534014,8,450000,clean\n"), fromBook);
    assertTrue(understood(fromBook).get(0).understood());
  }

  @Test
  void formulasAreRefusedInBothKindsOfFile() throws IOException {
    for (String cell : List.of("=1+1", "@SUM(A1)", "+cmd|' /C calc'!A0", " =HYPERLINK(1)")) {
      String text = "id,place\nA1,\"" + cell + "\"\n";
      assertTrue(refusal(text.getBytes(StandardCharsets.UTF_8)).contains("formula"), cell);
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "test", "1.0")) {
      Worksheet sheet = book.newWorksheet("list");
      sheet.value(0, 0, "id");
      sheet.formula(1, 0, "1+1");
    }
    assertTrue(refusal(bytes.toByteArray()).contains("formula"));
  }

  @Test
  void aFileThatUnpacksWithoutEndIsRefused() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
      byte[] zeros = new byte[1024 * 1024];
      for (int i = 0; i < 200; i++) {
        zip.write(zeros);
      }
    }
    assertTrue(bytes.size() < ListFile.LIMIT_BYTES);
    assertTrue(refusal(bytes.toByteArray()).contains("unpacks to more than"));
  }

  @Test
  void whatIsNoListIsRefusedInPlainWords() {
    assertTrue(
        refusal("id\nGr\u00FCn\n".getBytes(Charset.forName("windows-1252"))).contains("UTF-8"));
    assertTrue(refusal("id,us\n1,330\n".getBytes(StandardCharsets.UTF_16LE)).contains("binary"));
    assertTrue(refusal(new byte[0]).contains("is empty"));
    assertTrue(refusal("id,us\n".getBytes(StandardCharsets.UTF_8)).contains("no row"));
    assertTrue(refusal("id\n\"open\n".getBytes(StandardCharsets.UTF_8)).contains("quotation"));
    assertTrue(refusal(new byte[] {'P', 'K', 3, 4, 9, 9}).contains("save it again"));
    assertTrue(
        refusal(new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0}).contains("password"));
    assertTrue(refusal(new byte[ListFile.LIMIT_BYTES + 1]).contains("larger than 8 MiB"));
    assertTrue(
        refusal(("id\n" + "x".repeat(501)).getBytes(StandardCharsets.UTF_8)).contains("500"));
    assertTrue(refusal("id\n1,2\n".getBytes(StandardCharsets.UTF_8)).contains("the header 1"));
  }
}
