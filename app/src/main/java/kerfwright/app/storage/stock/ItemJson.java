package kerfwright.app.storage.stock;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import kerfwright.app.storage.StoredDocument;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.number.InstrumentResolver;
import kerfwright.catalogue.piece.PieceKinds;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/** Items and their parts as JSON text, the way they stand in columns. */
public final class ItemJson {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int MOST_REMEMBERED = 4096;

  /** Many pieces of a drawer are alike; what they are is worked out once. */
  private static final Map<DrawerFields, InstrumentProperties> KNOWN = new ConcurrentHashMap<>();

  private ItemJson() {}

  public static String text(StockItem item) {
    ObjectNode node = JSON.createObjectNode();
    node.put("id", item.id().toString()).put("version", item.version());
    node.put("label", item.label()).put("pieces", item.pieces());
    node.set("fields", fieldsNode(item.fields()));
    node.put("single_use", item.singleUse()).put("place", item.place());
    BigDecimal price = item.price();
    if (price != null) {
      node.put("price", price.toPlainString());
    }
    node.put("uses", item.uses()).put("sterilisations", item.sterilisations());
    node.set("cut_mm3", JSON.valueToTree(new TreeMap<>(item.cutMm3ByMaterial())));
    node.put("state", item.state().id()).put("removed", item.removed());
    return StoredDocument.ITEM.text(node);
  }

  public static StockItem item(String text) {
    JsonNode node = StoredDocument.ITEM.tree(text);
    JsonNode price = node.get("price");
    DrawerFields fields = fields(node.get("fields"));
    return new StockItem(
        UUID.fromString(node.get("id").asText()),
        node.get("version").asInt(),
        node.get("label").asText(),
        node.get("pieces").asInt(),
        fields,
        rotary(fields),
        node.get("single_use").asBoolean(),
        node.get("place").asText(),
        price == null ? null : new BigDecimal(price.asText()),
        node.get("uses").asInt(),
        node.get("sterilisations").asInt(),
        volumes(node.get("cut_mm3")),
        state(node.get("state").asText()),
        node.get("removed").asBoolean());
  }

  static InstrumentState state(@Nullable String id) {
    return Identified.of(InstrumentState.class, String.valueOf(id))
        .orElseThrow(() -> new IllegalStateException("No state is called " + id));
  }

  static String fieldsText(DrawerFields fields) {
    return fieldsNode(fields).toString();
  }

  static DrawerFields fields(String text) {
    return fields(tree(text));
  }

  static String volumesText(Map<String, Double> volumes) {
    return JSON.valueToTree(new TreeMap<>(volumes)).toString();
  }

  static Map<String, Double> volumes(String text) {
    return volumes(tree(text));
  }

  static @Nullable InstrumentProperties rotary(DrawerFields fields) {
    if (PieceKinds.byId(fields.kind()).isPresent()) {
      return null;
    }
    if (KNOWN.size() > MOST_REMEMBERED) {
      KNOWN.clear();
    }
    return KNOWN.computeIfAbsent(fields, any -> InstrumentResolver.resolve(any).orThrow());
  }

  private static ObjectNode fieldsNode(DrawerFields f) {
    ObjectNode node = JSON.createObjectNode();
    for (String name : DrawerFields.COLUMNS) {
      if (!f.at(name).isEmpty()) {
        node.put(name, f.at(name));
      }
    }
    return node;
  }

  private static DrawerFields fields(JsonNode node) {
    Map<String, String> cells = new LinkedHashMap<>();
    node.properties().forEach(one -> cells.put(one.getKey(), one.getValue().asText()));
    return new DrawerFields(cells);
  }

  private static Map<String, Double> volumes(JsonNode node) {
    Map<String, Double> volumes = new TreeMap<>();
    node.properties().forEach(one -> volumes.put(one.getKey(), one.getValue().asDouble()));
    return volumes;
  }

  private static JsonNode tree(String text) {
    try {
      return JSON.readTree(text);
    } catch (JsonProcessingException broken) {
      throw new IllegalStateException("Broken JSON in the database", broken);
    }
  }
}
