package kerfwright.app.casefile;

import kerfwright.app.input.Fields;
import kerfwright.planner.casework.Known;
import kerfwright.quantity.Identified;

/** The field {@code known}: how a thickness, or all of a case, is known. */
final class KnownField {
  private KnownField() {}

  static Known read(Fields fields, Known otherwise) {
    String id = fields.oneOf("known", "way of knowing", Known.ids(), false);
    return Identified.of(Known.class, id).orElse(otherwise);
  }
}
