package kerfwright.catalogue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Rows of a CSV file on the class path, by column name. */
public final class TestTable {
  private TestTable() {}

  public static List<Map<String, String>> rows(String resource) {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (var stream =
            Objects.requireNonNull(TestTable.class.getResourceAsStream(resource), resource);
        var reader = new InputStreamReader(stream, StandardCharsets.UTF_8);
        CSVParser parser = CSVParser.parse(reader, format)) {
      return parser.stream().map(CSVRecord::toMap).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
