package kerfwright.app.backup;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
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
  private static final ObjectMapper JSON = new ObjectMapper();

  /**
   * One table.
   *
   * @param shape its columns
   * @param rows how many rows
   * @param csvSha256 of its CSV file, lower-case hexadecimal
   * @param jsonSha256 of its JSON file
   */
  record Entry(TableShape shape, long rows, String csvSha256, String jsonSha256) {
    String csvFile() {
      return "tables/" + shape.name() + ".csv";
    }

    String jsonFile() {
      return "tables/" + shape.name() + ".json";
    }
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
    ArrayNode all = node.putArray("tables");
    for (Entry table : tables) {
      ObjectNode one = all.addObject();
      one.put("name", table.shape().name()).put("rows", table.rows());
      ArrayNode columns = one.putArray("columns");
      for (TableShape.Column column : table.shape().columns()) {
        columns.addObject().put("name", column.name()).put("kind", column.kind().name());
      }
      table.shape().order().forEach(one.putArray("order")::add);
      one.putObject("csv").put("file", table.csvFile()).put("sha256", table.csvSha256());
      one.putObject("json").put("file", table.jsonFile()).put("sha256", table.jsonSha256());
    }
    return JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(node);
  }

  /** Reads it; anything missing or of another format is an error. */
  static Manifest read(byte[] bytes) throws IOException {
    JsonNode node = JSON.readTree(bytes);
    if (!FORMAT.equals(node.path("archive").asText())) {
      throw new BadFile("backup.no-archive", FORMAT);
    }
    List<Entry> tables = new ArrayList<>();
    try {
      for (JsonNode one : node.required("tables")) {
        List<TableShape.Column> columns = new ArrayList<>();
        for (JsonNode column : one.required("columns")) {
          columns.add(
              new TableShape.Column(
                  column.required("name").asText(),
                  TableShape.Kind.valueOf(column.required("kind").asText())));
        }
        List<String> order = new ArrayList<>();
        one.required("order").forEach(name -> order.add(name.asText()));
        tables.add(
            new Entry(
                new TableShape(one.required("name").asText(), columns, order),
                one.required("rows").asLong(),
                one.required("csv").required("sha256").asText(),
                one.required("json").required("sha256").asText()));
      }
      String schema = node.required("schema").asText();
      Seal seal = Seal.of(node.path("seal").asText()).orElse(null);
      return new Manifest(schema, Instant.parse(node.required("madeAt").asText()), seal, tables);
    } catch (IllegalArgumentException | java.time.DateTimeException broken) {
      throw new BadFile("backup.no-manifest", String.valueOf(broken.getMessage()));
    }
  }
}
