package kerfwright.app.input;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import kerfwright.catalogue.NearestName;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/**
 * The fields of one mapping, read one after the other; whatever is wrong goes to the faults and the
 * value is null, so that reading goes on to the end. Call {@link #rejectUnknown()} last.
 */
public final class Fields {
  private final Node.Mapping mapping;
  private final String path;
  private final Faults faults;
  private final Set<String> known = new LinkedHashSet<>();

  public Fields(Node.Mapping mapping, String path, Faults faults) {
    this.mapping = mapping;
    this.path = path;
    this.faults = faults;
  }

  public String path(String name) {
    return path.isEmpty() ? name : path + "." + name;
  }

  /** Line of a field, or of the mapping where the field is missing. */
  public int line(String name) {
    Node.Entry entry = mapping.entries().get(name);
    return entry == null ? mapping.line() : entry.line();
  }

  public void fault(String name, Message message) {
    faults.add(line(name), path(name), message);
  }

  /** The node of a field; null where it is missing or empty. */
  public @Nullable Node optional(String name) {
    known.add(name);
    Node.Entry entry = mapping.entries().get(name);
    if (entry == null
        || entry.value() instanceof Node.Scalar scalar && scalar.kind() == Node.Scalar.Kind.EMPTY) {
      return null;
    }
    return entry.value();
  }

  public @Nullable Node required(String name, Message expected) {
    return requiredOr(name, Message.of("fault.missing", expected));
  }

  private @Nullable Node requiredOr(String name, Message missing) {
    Node node = optional(name);
    if (node == null) {
      faults.add(line(name), path(name), missing);
    }
    return node;
  }

  public @Nullable String text(String name, Message expected) {
    Node node = required(name, expected);
    if (node == null || node instanceof Node.Scalar) {
      return node instanceof Node.Scalar scalar ? scalar.text().strip() : null;
    }
    faults.add(node.line(), path(name), Message.of("fault.must-be", expected, node.found()));
    return null;
  }

  /** One of a closed set of names; null where missing or unknown. */
  public @Nullable String oneOf(
      String name, String what, Collection<String> names, boolean required) {
    Message word = Message.of("fault.what-" + what);
    Node node =
        required
            ? requiredOr(name, Message.of("fault.missing-one-of", word, list(names)))
            : optional(name);
    if (node == null) {
      return null;
    }
    if (!(node instanceof Node.Scalar scalar)) {
      faults.add(
          node.line(),
          path(name),
          Message.of("fault.must-be-one-of", word, list(names), node.found()));
      return null;
    }
    String text = scalar.text().strip();
    if (names.contains(text)) {
      return text;
    }
    faults.add(
        line(name),
        path(name),
        Message.of("fault.unknown", word, text, list(names)),
        NearestName.nearest(text, names).orElse(null));
    return null;
  }

  /** Items of a list, or null where the field is missing or not a list. */
  public @Nullable List<Node> items(String name, Node node) {
    if (node instanceof Node.Listing listing) {
      return listing.items();
    }
    faults.add(node.line(), path(name), Message.of("fault.list", node.found()));
    return null;
  }

  /** The mappings of a list; whatever else stands in it is a fault and skipped. */
  public List<Fields> rows(String name, String expected, boolean required) {
    Node node = required ? required(name, Message.of("fault.list-of", expected)) : optional(name);
    List<Node> items = node == null ? null : items(name, node);
    List<Fields> rows = new ArrayList<>();
    for (int i = 0; items != null && i < items.size(); i++) {
      String at = path(name) + "[" + i + "]";
      Node item = items.get(i);
      if (item instanceof Node.Mapping row) {
        rows.add(new Fields(row, at, faults));
      } else {
        faults.add(item.line(), at, Message.of("fault.must-be", expected, item.found()));
      }
    }
    return rows;
  }

  /** A whole number within bounds; null where missing or wrong. */
  public @Nullable Integer whole(String name, Bounds bounds) {
    Node node = required(name, bounds.allowed());
    return node == null ? null : whole(path(name), node, bounds);
  }

  /** The whole numbers of a list; what is none is a fault and skipped. */
  public List<Integer> wholes(String name, @Nullable Node list, Bounds bounds) {
    List<Node> items = list == null ? null : items(name, list);
    List<Integer> numbers = new ArrayList<>();
    for (int i = 0; items != null && i < items.size(); i++) {
      Integer number = whole(path(name) + "[" + i + "]", items.get(i), bounds);
      if (number != null) {
        numbers.add(number);
      }
    }
    return numbers;
  }

  private @Nullable Integer whole(String at, Node node, Bounds bounds) {
    Double value = number(at, node, bounds, faults);
    if (value != null && value != Math.rint(value)) {
      faults.add(node.line(), at, Message.of("fault.whole", node.found()));
      return null;
    }
    return value == null ? null : value.intValue();
  }

  /** A number within bounds; null where missing or wrong. */
  public @Nullable Double number(String name, Bounds bounds, boolean required) {
    Node node = required ? required(name, bounds.allowed()) : optional(name);
    return node == null ? null : number(path(name), node, bounds, faults);
  }

  /** Reads a node as a number within bounds. */
  public static @Nullable Double number(String path, Node node, Bounds bounds, Faults faults) {
    if (!(node instanceof Node.Scalar scalar)) {
      faults.add(node.line(), path, Message.of("fault.must-be", bounds.allowed(), node.found()));
      return null;
    }
    Double value = parse(scalar.text());
    if (value == null || !bounds.allow(value)) {
      faults.add(node.line(), path, Message.of("fault.must-be", bounds.allowed(), scalar.found()));
      return null;
    }
    return value;
  }

  private static @Nullable Double parse(String text) {
    String trimmed = text.strip();
    if (!trimmed.matches("[+-]?(\\d{1,30}(\\.\\d{0,30})?|\\.\\d{1,30})([eE][+-]?\\d{1,3})?")) {
      return null;
    }
    double value = new BigDecimal(trimmed).doubleValue();
    return Double.isFinite(value) ? value : null;
  }

  /** The fields below a field, or null where it is missing or holds something else. */
  public @Nullable Fields fields(String name, Message expected, boolean required) {
    Node node = required ? required(name, expected) : optional(name);
    if (node == null) {
      return null;
    }
    if (node instanceof Node.Mapping below) {
      return new Fields(below, path(name), faults);
    }
    faults.add(node.line(), path(name), Message.of("fault.must-be", expected, node.found()));
    return null;
  }

  /** Faults for every field nobody asked for. */
  public void rejectUnknown() {
    for (var entry : mapping.entries().entrySet()) {
      if (!known.contains(entry.getKey())) {
        faults.add(
            entry.getValue().line(),
            path(entry.getKey()),
            Message.of("fault.no-field", list(known)),
            faults.enough() ? null : NearestName.nearest(entry.getKey(), known).orElse(null));
      }
    }
  }

  private static String list(Collection<String> names) {
    List<String> all = new ArrayList<>(names);
    return String.join(", ", all);
  }
}
