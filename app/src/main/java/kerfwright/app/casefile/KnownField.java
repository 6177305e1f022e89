package kerfwright.app.casefile;

import java.util.Arrays;
import kerfwright.app.input.Fields;
import kerfwright.planner.casework.Known;

/** The field {@code known}: how a thickness, or all of a case, is known. */
final class KnownField {
  private KnownField() {}

  static Known read(Fields fields, Known otherwise) {
    String id = fields.oneOf("known", "way-of-knowing", Known.ids(), false);
    return Arrays.stream(Known.values())
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElse(otherwise);
  }
}
