package kerfwright.catalogue.data;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The rows of one packaged {@code values.csv} and every fault found while reading it.
 *
 * @param file path of the file within the catalogue
 * @param readable the rows that could be read
 * @param faults what is wrong; empty in a sound file
 */
public record Topic<T>(String file, List<T> readable, List<DataFault> faults) {
  /** Columns every file carries after its own. */
  public static final List<String> STANDING =
      List.of("sources", "locator", "basis", "confidence", "note");

  public Topic {
    readable = List.copyOf(readable);
    faults = List.copyOf(faults);
  }

  /** All rows, or one exception with all faults. */
  public List<T> rows() {
    if (!faults.isEmpty()) {
      throw new DataFaultException(faults);
    }
    return readable;
  }

  /**
   * Reads {@code <topic>/values.csv}; its header must be {@code id}, the given columns, then {@link
   * #STANDING}.
   */
  public static <T> Topic<T> read(String topic, List<String> own, Function<DataRow, T> toValue) {
    String file = topic + "/values.csv";
    InputStream stream = Topic.class.getResourceAsStream("/kerfwright/catalogue/" + file);
    if (stream == null) {
      return new Topic<>(
          file, List.of(), List.of(new DataFault(file, 0, "(file)", "nothing", "a data file")));
    }
    try (Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
      return read(file, reader, own, toValue);
    } catch (IOException e) {
      return new Topic<>(
          file,
          List.of(),
          List.of(new DataFault(file, 0, "(file)", String.valueOf(e), "a readable CSV file")));
    }
  }

  static <T> Topic<T> read(
      String file, Reader reader, List<String> own, Function<DataRow, T> toValue)
      throws IOException {
    List<String> header = new ArrayList<>();
    header.add("id");
    header.addAll(own);
    header.addAll(STANDING);
    List<DataFault> faults = new ArrayList<>();
    List<T> values = new ArrayList<>();
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(reader, format)) {
      if (!parser.getHeaderNames().equals(header)) {
        String found = String.join(",", parser.getHeaderNames());
        faults.add(new DataFault(file, 1, "(header)", found, String.join(",", header)));
        return new Topic<>(file, values, faults);
      }
      Set<String> ids = new HashSet<>();
      long line = parser.getCurrentLineNumber() + 1;
      for (CSVRecord csv : parser) {
        DataRow row = new DataRow(file, line, csv, faults);
        line = parser.getCurrentLineNumber() + 1;
        if (!csv.isConsistent()) {
          row.fault("(row)", csv.size() + " cells", header.size() + " cells");
          continue;
        }
        if (!ids.add(row.text("id"))) {
          row.fault("id", row.text("id"), "an id not used above");
        }
        readOne(row, toValue, values);
      }
    }
    return new Topic<>(file, values, faults);
  }

  private static <T> void readOne(DataRow row, Function<DataRow, T> toValue, List<T> values) {
    int before = row.faultCount();
    try {
      T value = toValue.apply(row);
      if (row.faultCount() == before) {
        values.add(value);
      }
    } catch (IllegalArgumentException e) {
      if (row.faultCount() == before) {
        row.fault("(row)", row.text("id"), String.valueOf(e.getMessage()));
      }
    }
  }
}
