package kerfwright.app.backup;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import kerfwright.app.input.BadFile;
import kerfwright.app.storage.Seal;
import kerfwright.app.storage.TableShape;
import org.jspecify.annotations.Nullable;

/**
 * What an archive says of itself.
 *
 * @param schema version of the schema
 * @param madeAt when
 * @param seal ends of the chains in it; null in archives from before it was written
 * @param tables what is in it
 */
record Manifest(String schema, Instant madeAt, @Nullable Seal seal, List<Entry> tables) {
  static final String FILE = "manifest.json";

  private static final String FORMAT = "kerfwright-archive/1";
  private static final ObjectMapper JSON =
      new ObjectMapper()
          .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES);

  /**
   * One table.
   *
   * @param name its name
   * @param rows how many rows
   * @param columns in their order
   * @param order what its rows are sorted by
   * @param csv its CSV file
   * @param json its JSON file
   */
  record Entry(
      String name,
      long rows,
      List<TableShape.Column> columns,
      List<String> order,
      Part csv,
      Part json) {
    static Entry of(TableShape shape, long rows, String csvSha256, String jsonSha256) {
      return new Entry(
          shape.name(),
          rows,
          shape.columns(),
          shape.order(),
          new Part(csvFile(shape), csvSha256),
          new Part(jsonFile(shape), jsonSha256));
    }
  }

  /** A file in the archive, with its sum in lower-case hexadecimal. */
  record Part(String file, String sha256) {}

  static String csvFile(TableShape shape) {
    return "tables/" + shape.name() + ".csv";
  }

  static String jsonFile(TableShape shape) {
    return "tables/" + shape.name() + ".json";
  }

  long rows() {
    return tables.stream().mapToLong(Entry::rows).sum();
  }

  byte[] bytes() throws IOException {
    ObjectNode node = JSON.createObjectNode();
    node.put("archive", FORMAT).put("schema", schema).put("madeAt", madeAt.toString());
    if (seal != null) {
      node.put("seal", seal.text());
    }
    node.set("tables", JSON.valueToTree(tables));
    return JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(node);
  }

  /** Reads it; anything missing or of another format is an error. */
  static Manifest read(byte[] bytes) throws IOException {
    JsonNode node = JSON.readTree(bytes);
    if (!FORMAT.equals(node.path("archive").asText())) {
      throw new BadFile("backup.no-archive", FORMAT);
    }
    try {
      List<Entry> tables = new ArrayList<>();
      for (JsonNode one : node.required("tables")) {
        tables.add(JSON.treeToValue(one, Entry.class));
      }
      String schema = node.required("schema").asText();
      Seal seal = Seal.of(node.path("seal").asText()).orElse(null);
      return new Manifest(schema, Instant.parse(node.required("madeAt").asText()), seal, tables);
    } catch (JsonProcessingException | IllegalArgumentException | DateTimeException broken) {
      throw new BadFile("backup.no-manifest", String.valueOf(broken.getMessage()));
    }
  }
}
