package kerfwright.catalogue.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import kerfwright.quantity.Message;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A packaged CSV file with a known header. */
public final class Table {
  private static final String ROOT = "/kerfwright/catalogue/";

  private Table() {}

  /** Whether the file is packaged. */
  public static boolean exists(String file) {
    return Table.class.getResource(ROOT + file) != null;
  }

  /** Rows of a packaged file; a missing file is a fault and gives no rows. */
  public static List<Row> read(String file, Faults faults) {
    try (InputStream in = Table.class.getResourceAsStream(ROOT + file)) {
      if (in == null) {
        faults.add(file, 0, "-", "the file is missing");
        return List.of();
      }
      return parse(file, new InputStreamReader(in, StandardCharsets.UTF_8), List.of(), faults);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The header of a packaged file. */
  public static List<String> header(String file) {
    return read(file, new Faults()).get(0).header();
  }

  /**
   * Rows of a text; a row with too many or too few cells is a fault and is left out.
   *
   * @param expected the header it must have, else a fault and no rows; empty for any
   */
  public static List<Row> parse(String file, Reader text, List<String> expected, Faults faults) {
    List<Row> rows = new ArrayList<>();
    List<String> header = List.of();
    try (CSVParser parser = CSVFormat.RFC4180.builder().setTrim(true).get().parse(text)) {
      for (CSVRecord cells : parser) {
        long line = parser.getCurrentLineNumber();
        if (header.isEmpty()) {
          header = cells.toList();
          if (!expected.isEmpty() && !header.equals(expected)) {
            faults.add(
                file, line, "-", Message.of("fault.table-header", String.join(",", expected)));
            return List.of();
          }
        } else if (cells.size() != header.size()) {
          faults.add(file, line, "-", Message.of("fault.table-cells", cells.size(), header.size()));
        } else {
          rows.add(new Row(file, line, header, cells.toList(), faults));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return rows;
  }
}
