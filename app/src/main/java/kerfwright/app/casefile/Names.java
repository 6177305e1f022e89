package kerfwright.app.casefile;

import java.util.Collection;
import kerfwright.app.input.Faults;
import kerfwright.app.input.Node;
import kerfwright.catalogue.NearestName;
import org.jspecify.annotations.Nullable;

/** Reads an item of a list as one of a closed set of names. */
final class Names {
  private Names() {}

  static @Nullable String oneOf(
      String path, Node node, String what, Collection<String> names, Faults faults) {
    String all = String.join(", ", names);
    if (!(node instanceof Node.Scalar scalar)) {
      faults.add(
          node.line(), path, "must be a " + what + ": " + all + "; found " + node.describe());
      return null;
    }
    String text = scalar.text().strip();
    if (names.contains(text)) {
      return text;
    }
    faults.add(
        node.line(),
        path,
        "there is no " + what + " '" + text + "'; expected one of " + all,
        NearestName.nearest(text, names).orElse(null));
    return null;
  }
}
