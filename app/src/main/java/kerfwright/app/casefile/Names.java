package kerfwright.app.casefile;

import java.util.Collection;
import kerfwright.app.input.Faults;
import kerfwright.app.input.Node;
import kerfwright.catalogue.NearestName;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/** Reads an item of a list as one of a closed set of names. */
final class Names {
  private Names() {}

  static @Nullable String oneOf(
      String path, Node node, String what, Collection<String> names, Faults faults) {
    String all = String.join(", ", names);
    Message word = Message.of("fault.what-" + what);
    if (!(node instanceof Node.Scalar scalar)) {
      faults.add(node.line(), path, Message.of("fault.must-be-name", word, all, node.found()));
      return null;
    }
    String text = scalar.text().strip();
    if (names.contains(text)) {
      return text;
    }
    faults.add(
        node.line(),
        path,
        Message.of("fault.unknown", word, text, all),
        NearestName.nearest(text, names).orElse(null));
    return null;
  }
}
