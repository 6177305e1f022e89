package kerfwright.app.drawerfile;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.input.Faults;
import kerfwright.app.input.SourceText;
import kerfwright.catalogue.NearestName;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.quantity.Message;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads the drawer file: CSV with a header, one instrument a line. */
public final class DrawerFile {
  static final List<String> COLUMNS =
      Stream.of(List.of("id"), DrawerFields.COLUMNS, List.of("uses", "sterilisations", "state"))
          .flatMap(List::stream)
          .toList();
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setIgnoreEmptyLines(true).setTrim(true).get();

  private final InstrumentLookup lookup;

  public DrawerFile(InstrumentLookup lookup) {
    this.lookup = lookup;
  }

  public DrawerSnapshot read(Path file) throws BadInput {
    return read(SourceText.of(file));
  }

  /** Reads the whole file; throws with all its faults. */
  public DrawerSnapshot read(SourceText source) throws BadInput {
    Faults faults = new Faults(source.origin());
    List<DrawerInstrument> instruments = new ArrayList<>();
    Map<String, Integer> lineOfId = new HashMap<>();
    long line = 0;
    try (CSVParser parser = CSVParser.parse(new StringReader(source.text()), FORMAT)) {
      Map<String, Integer> header = null;
      for (CSVRecord cells : parser) {
        // the parser counts the last line of a record; a record of one line starts there
        line = parser.getCurrentLineNumber();
        if (header == null) {
          header = header(cells, (int) line, faults);
          continue;
        }
        Row row = new Row(header, cells, (int) line, faults);
        DrawerInstrument instrument = new RowReader(lookup).read(row);
        Integer earlier = lineOfId.putIfAbsent(row.text("id"), (int) line);
        if (earlier != null && !row.text("id").isEmpty()) {
          row.fault("id", Message.of("listed.id-twice-in-file", row.text("id"), earlier));
        } else if (instrument != null) {
          instruments.add(instrument);
        }
      }
      if (header == null) {
        throw new BadInput(source.origin(), Message.of("listed.no-header", columns()));
      }
    } catch (CSVException | UncheckedIOException broken) {
      throw broken(source.origin(), line);
    } catch (IOException broken) {
      throw broken(source.origin(), line);
    }
    faults.throwIfAny();
    if (instruments.isEmpty()) {
      throw new BadInput(source.origin(), Message.of("listed.no-instrument"));
    }
    return new DrawerSnapshot(instruments);
  }

  private static String columns() {
    return String.join(",", COLUMNS);
  }

  private static BadInput broken(String origin, long line) {
    Message problem = Message.of("listed.broken-csv");
    return new BadInput(List.of(new Fault(origin, (int) line + 1, "", problem, null)));
  }

  private static Map<String, Integer> header(CSVRecord cells, int line, Faults faults)
      throws BadInput {
    Map<String, Integer> header = new LinkedHashMap<>();
    for (int i = 0; i < cells.size(); i++) {
      String name = cells.get(i);
      if (!COLUMNS.contains(name)) {
        faults.add(
            line,
            name,
            Message.of("listed.no-column", columns()),
            NearestName.nearest(name, COLUMNS).orElse(null));
      } else if (header.put(name, i) != null) {
        faults.add(line, name, Message.of("listed.column-twice"));
      }
    }
    for (String needed : List.of("id", "state")) {
      if (!header.containsKey(needed)) {
        faults.add(line, needed, Message.of("listed.column-missing", columns()));
      }
    }
    // with a wrong header every row would be misread: stop here
    faults.throwIfAny();
    return header;
  }
}
