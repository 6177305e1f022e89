package kerfwright.app.input;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerfwright.quantity.Message;
import org.yaml.snakeyaml.LoaderOptions;

/**
 * Reads YAML or JSON into a tree that knows its lines. Aliases are refused (they let a small file
 * unfold into a huge one), nesting and size are limited, a name may stand only once.
 */
public final class TreeReader {
  private static final int DEEPEST = 12;
  private static final StreamReadConstraints LIMITS =
      StreamReadConstraints.builder().maxNestingDepth(50).maxNumberLength(60).build();

  private final String origin;
  private final JsonParser parser;

  private TreeReader(String origin, JsonParser parser) {
    this.origin = origin;
    this.parser = parser;
  }

  /** The one document of a YAML file. */
  public static Node.Mapping yaml(SourceText source) throws BadInput {
    LoaderOptions options = new LoaderOptions();
    options.setMaxAliasesForCollections(0);
    options.setNestingDepthLimit(50);
    options.setCodePointLimit(SourceText.LIMIT_BYTES);
    YAMLFactory factory =
        YAMLFactory.builder().loaderOptions(options).streamReadConstraints(LIMITS).build();
    return read(source, factory, true);
  }

  /** The one object of a JSON text. */
  public static Node.Mapping json(SourceText source) throws BadInput {
    return read(source, JsonFactory.builder().streamReadConstraints(LIMITS).build(), false);
  }

  private static Node.Mapping read(SourceText source, JsonFactory factory, boolean yaml)
      throws BadInput {
    try (JsonParser parser = factory.createParser(source.text())) {
      TreeReader reader = new TreeReader(source.origin(), parser);
      if (parser.nextToken() == null) {
        throw new BadInput(source.origin(), Message.of("fault.empty"));
      }
      Node top = reader.node(0);
      if (parser.nextToken() != null) {
        throw reader.failure("fault.second-document");
      }
      if (top instanceof Node.Mapping mapping) {
        return mapping;
      }
      throw new BadInput(
          List.of(
              new Fault(
                  source.origin(),
                  top.line(),
                  "",
                  Message.of("fault.no-fields", top.found()),
                  null)));
    } catch (JsonProcessingException broken) {
      int line = broken.getLocation() == null ? 0 : broken.getLocation().getLineNr();
      Message what = Message.of("fault.broken", yaml ? "YAML" : "JSON", firstSentence(broken));
      throw new BadInput(List.of(new Fault(source.origin(), Math.max(0, line), "", what, null)));
    } catch (IOException impossible) {
      throw new BadInput(source.origin(), Message.of("fault.unreadable"));
    }
  }

  private static String firstSentence(JsonProcessingException broken) {
    String message = broken.getOriginalMessage();
    List<String> kept = new ArrayList<>();
    for (String line : (message == null ? "" : message).split("\n")) {
      String trimmed = line.strip();
      boolean position = trimmed.startsWith("in ") || trimmed.startsWith("at ");
      if (!position && !trimmed.isEmpty() && Character.isLetter(trimmed.charAt(0))) {
        kept.add(trimmed);
      }
      if (kept.size() == 2) {
        break;
      }
    }
    return String.join(", ", kept);
  }

  private Node node(int depth) throws IOException, BadInput {
    if (depth > DEEPEST) {
      throw failure("fault.too-deep");
    }
    if (parser instanceof YAMLParser yamlParser && yamlParser.isCurrentAlias()) {
      throw failure("fault.alias");
    }
    int line = parser.currentTokenLocation().getLineNr();
    JsonToken token = parser.currentToken();
    if (token == JsonToken.START_OBJECT) {
      return mapping(depth, line);
    }
    if (token == JsonToken.START_ARRAY) {
      List<Node> items = new ArrayList<>();
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        items.add(node(depth + 1));
      }
      return new Node.Listing(items, line);
    }
    return new Node.Scalar(parser.getText(), kind(token), line);
  }

  private Node.Mapping mapping(int depth, int line) throws IOException, BadInput {
    Map<String, Node.Entry> entries = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      int nameLine = parser.currentTokenLocation().getLineNr();
      if (entries.containsKey(name)) {
        throw failure("fault.twice", name);
      }
      parser.nextToken();
      entries.put(name, new Node.Entry(node(depth + 1), nameLine));
    }
    return new Node.Mapping(entries, line);
  }

  private static Node.Scalar.Kind kind(JsonToken token) {
    return switch (token) {
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Node.Scalar.Kind.NUMBER;
      case VALUE_TRUE, VALUE_FALSE -> Node.Scalar.Kind.BOOLEAN;
      case VALUE_NULL -> Node.Scalar.Kind.EMPTY;
      default -> Node.Scalar.Kind.TEXT;
    };
  }

  private BadInput failure(String key, Object... values) {
    int line = parser.currentTokenLocation().getLineNr();
    return new BadInput(List.of(new Fault(origin, line, "", Message.of(key, values), null)));
  }
}
