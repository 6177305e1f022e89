package kerfwright.app.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NumericNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/** Writes JSON the same way on every machine and Java. */
public final class JsonText {
  private static final MathContext DIGITS = new MathContext(6, RoundingMode.HALF_EVEN);
  private static final ObjectWriter WRITER = writer();

  private JsonText() {}

  private static ObjectWriter writer() {
    DefaultIndenter indent = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent);
    return JsonMapper.builder()
        .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
        .build()
        .writer(printer);
  }

  /** The text, two spaces an indent, a line feed at its end. */
  public static String of(JsonNode json) {
    try {
      return WRITER.writeValueAsString(json) + "\n";
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** A figure rounded to six significant digits. */
  public static NumericNode number(double value) {
    BigDecimal rounded = new BigDecimal(value).round(DIGITS);
    BigDecimal stripped = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
    return DecimalNode.valueOf(stripped.scale() < 0 ? stripped.setScale(0) : stripped);
  }

  public static ArrayNode numbers(List<Double> values) {
    ArrayNode all = JsonNodeFactory.instance.arrayNode();
    values.forEach(value -> all.add(number(value)));
    return all;
  }
}
