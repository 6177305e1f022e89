package kerfwright.app.day;

import kerfwright.app.input.Bounds;
import kerfwright.app.input.Faults;
import kerfwright.app.input.Fields;
import kerfwright.app.input.Node;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/** Reads numbers that must be whole. */
final class WholeNumber {
  private WholeNumber() {}

  static @Nullable Integer read(Fields fields, Faults faults, String name, Bounds bounds) {
    Node node = fields.required(name, bounds.allowed());
    return node == null ? null : read(faults, fields.path(name), node, bounds);
  }

  static @Nullable Integer read(Faults faults, String path, Node node, Bounds bounds) {
    Double value = Fields.number(path, node, bounds, faults);
    if (value == null) {
      return null;
    }
    if (value != Math.rint(value)) {
      faults.add(node.line(), path, Message.of("fault.whole", node.found()));
      return null;
    }
    return value.intValue();
  }
}
