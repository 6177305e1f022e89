package kerfwright.app.backup;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import kerfwright.app.form.CellText;
import kerfwright.app.storage.Snapshot;
import kerfwright.app.storage.TableShape;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.QuoteMode;
import org.jspecify.annotations.Nullable;

/**
 * One table as text. JSON holds every value exactly and is what is read back; CSV is for people and
 * spreadsheets: an empty field is no value, an empty text is written "".
 */
final class TableFiles {
  /** Closing ends the text, not what it is written into. */
  private static final JsonFactory JSON =
      new JsonFactory().disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);

  private TableFiles() {}

  /** Writes the rows as JSON, one object a line; tells how many. */
  static long json(Snapshot snapshot, TableShape table, OutputStream to) throws IOException {
    long[] rows = {0};
    try (JsonGenerator json = JSON.createGenerator(to, JsonEncoding.UTF8)) {
      json.writeStartArray();
      snapshot.rows(
          table,
          values -> {
            json.writeRaw(rows[0]++ == 0 ? "\n" : "");
            json.writeStartObject();
            for (int i = 0; i < values.length; i++) {
              json.writeFieldName(table.columns().get(i).name());
              write(json, values[i]);
            }
            json.writeEndObject();
            json.writeRaw("\n");
          });
      json.writeEndArray();
    }
    return rows[0];
  }

  private static void write(JsonGenerator json, @Nullable Object value) throws IOException {
    if (value == null) {
      json.writeNull();
    } else if (value instanceof Long whole) {
      json.writeNumber(whole);
    } else if (value instanceof Double real) {
      json.writeNumber(real);
    } else {
      json.writeString(text(value));
    }
  }

  static void csv(Snapshot snapshot, TableShape table, OutputStream to) throws IOException {
    Writer writer = new OutputStreamWriter(to, StandardCharsets.UTF_8);
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setQuoteMode(QuoteMode.ALL_NON_NULL)
            .setHeader(table.names().toArray(String[]::new))
            .get();
    // not closed: the archive goes on behind it
    CSVPrinter csv = new CSVPrinter(writer, format);
    snapshot.rows(
        table,
        values -> {
          for (Object value : values) {
            csv.print(
                value instanceof byte[] || value instanceof String
                    ? CellText.of(text(value))
                    : value);
          }
          csv.println();
        });
    writer.flush();
  }

  private static String text(Object value) {
    return value instanceof byte[] bytes
        ? Base64.getEncoder().encodeToString(bytes)
        : value.toString();
  }
}
