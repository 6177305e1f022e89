package kerfwright.app.storage.cases;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.function.Function;
import kerfwright.schedule.remedy.Remedy;

/**
 * Days and trays as JSON text, the way they stand in columns: {@code layout}, the number of this
 * layout (none in the oldest documents of layout 1), then the components of {@code DayBook} or
 * {@code TrayTemplate} by name. A component renamed in the program keeps its name here by a mix-in;
 * whatever else changes is a layout of its own, and {@link #read} turns the older one into it.
 */
public final class DayDocument {
  private static final String LAYOUT = "layout";
  private static final int NEWEST = 1;
  private static final ObjectMapper JSON =
      new ObjectMapper().registerModule(times()).addMixIn(Remedy.class, RemedyKinds.class);

  private DayDocument() {}

  @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
  @JsonSubTypes({
    @JsonSubTypes.Type(value = Remedy.UseSubstitute.class, name = "substitute"),
    @JsonSubTypes.Type(value = Remedy.SwapAppointments.class, name = "swap"),
    @JsonSubTypes.Type(value = Remedy.LoadBetween.class, name = "load-between"),
    @JsonSubTypes.Type(value = Remedy.LoadBeforeOpening.class, name = "load-before-opening"),
    @JsonSubTypes.Type(value = Remedy.LoadBeside.class, name = "load-beside"),
    @JsonSubTypes.Type(value = Remedy.BuyMore.class, name = "buy")
  })
  private interface RemedyKinds {}

  private static SimpleModule times() {
    SimpleModule module = new SimpleModule("times");
    module.addSerializer(LocalTime.class, ToStringSerializer.instance);
    module.addSerializer(LocalDate.class, ToStringSerializer.instance);
    module.addDeserializer(LocalTime.class, parsed(LocalTime::parse));
    module.addDeserializer(LocalDate.class, parsed(LocalDate::parse));
    return module;
  }

  private static <T> JsonDeserializer<T> parsed(Function<String, T> parse) {
    return new JsonDeserializer<>() {
      @Override
      public T deserialize(
          com.fasterxml.jackson.core.JsonParser parser, DeserializationContext context)
          throws IOException {
        return parse.apply(parser.getText());
      }
    };
  }

  public static String text(Object value) {
    try {
      ObjectNode document = JSON.createObjectNode().put(LAYOUT, NEWEST);
      return JSON.writeValueAsString(document.setAll(JSON.<ObjectNode>valueToTree(value)));
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("A day cannot be written", impossible);
    }
  }

  public static <T> T read(String text, Class<T> type) {
    try {
      JsonNode document = JSON.readTree(text);
      if (document instanceof ObjectNode fields && fields.has(LAYOUT)) {
        int layout = fields.remove(LAYOUT).asInt();
        if (layout > NEWEST) {
          throw new IllegalStateException("Layout " + layout + " of a day is of a newer program");
        }
      }
      return JSON.treeToValue(document, type);
    } catch (JsonProcessingException broken) {
      throw new IllegalStateException("Broken JSON in the database", broken);
    }
  }
}
