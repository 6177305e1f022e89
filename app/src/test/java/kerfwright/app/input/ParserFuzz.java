package kerfwright.app.input;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseFile;
import kerfwright.app.day.DayFile;
import kerfwright.app.drawerfile.DrawerFile;
import kerfwright.app.heatfile.HeatFile;
import kerfwright.app.stocklist.ColumnMapping;
import kerfwright.app.stocklist.ListFile;
import kerfwright.app.stocklist.ListTable;
import kerfwright.app.stocklist.RowMeaning;
import kerfwright.app.stocklist.UnreadableList;
import kerfwright.catalogue.tooth.ToothNotation;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.label.ElementString;
import kerfwright.practice.record.CanonicalText;

/**
 * Every parser behind one door, for the fuzzer: the first byte chooses the parser, the rest is its
 * text. What comes out is a fault of the program.
 */
public final class ParserFuzz {
  private static final Wiring WIRING = Wiring.production();

  private ParserFuzz() {}

  /** Reads a text; throws only what is a fault. */
  private interface Parser {
    void read(String text) throws BadInput, UnreadableList;
  }

  private static final List<Map.Entry<String, Parser>> PARSERS =
      List.of(
          Map.entry("case", text -> new CaseFile(WIRING.cases()).yaml(source(text))),
          Map.entry("case-json", text -> new CaseFile(WIRING.cases()).json(source(text))),
          Map.entry("day", text -> new DayFile(one -> List.of()).read(source(text))),
          Map.entry("heat", text -> HeatFile.read(source(text))),
          Map.entry("drawer", text -> new DrawerFile(WIRING.instruments()).read(source(text))),
          Map.entry("list", ParserFuzz::list),
          Map.entry("tooth", text -> argument(() -> ToothNotation.parse(text))),
          Map.entry(
              "label", text -> argument(() -> ElementString.read(text, LocalDate.now().getYear()))),
          Map.entry("record", text -> argument(() -> CanonicalText.entry(text, ""))));

  static List<String> parsers() {
    return PARSERS.stream().map(Map.Entry::getKey).toList();
  }

  /** A text for a parser, as the fuzzer hands it over. */
  static byte[] input(String parser, byte[] text) {
    byte[] all = new byte[text.length + 1];
    all[0] = (byte) ('a' + parsers().indexOf(parser));
    System.arraycopy(text, 0, all, 1, text.length);
    return all;
  }

  /** The fuzzer calls it by this name. */
  public static void fuzzerTestOneInput(byte[] data) {
    if (data.length == 0) {
      return;
    }
    int which = Math.floorMod(data[0] - 'a', PARSERS.size());
    String text = new String(data, 1, data.length - 1, StandardCharsets.UTF_8);
    try {
      PARSERS.get(which).getValue().read(text);
    } catch (BadInput | UnreadableList itsOwn) {
      // told in words: that is how a bad input ends well
    }
  }

  private static SourceText source(String text) throws BadInput {
    try {
      return SourceText.of(
          "fuzz", new java.io.ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    } catch (java.io.IOException never) {
      throw new java.io.UncheckedIOException(never);
    }
  }

  private static void list(String text) throws UnreadableList {
    ListTable table = ListFile.read("fuzz.csv", text.getBytes(StandardCharsets.UTF_8));
    new RowMeaning(InstrumentState.QUARANTINE, UUID::randomUUID, Set.of())
        .read(table, ColumnMapping.guess(table.header()));
  }

  /** For parsers whose own fault is this exception, as they document. */
  private static void argument(Runnable reading) {
    try {
      reading.run();
    } catch (IllegalArgumentException | java.time.DateTimeException documented) {
      // its own kind of fault
    }
  }
}
