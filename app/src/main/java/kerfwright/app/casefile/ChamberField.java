package kerfwright.app.casefile;

import kerfwright.app.input.Bounds;
import kerfwright.app.input.Faults;
import kerfwright.app.input.Fields;
import kerfwright.app.input.Node;
import kerfwright.planner.casework.ChamberDepth;
import kerfwright.planner.casework.Known;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;
import kerfwright.quantity.Range;
import org.jspecify.annotations.Nullable;

/** The field {@code chamber}: its depth below the cusp tip, or below the lingual surface. */
final class ChamberField {
  private static final Bounds DEPTH = Bounds.above(0, 20, "mm");

  private ChamberField() {}

  static @Nullable ChamberDepth read(Fields fields, Faults faults, Known ofCase) {
    Fields chamber = fields.fields("chamber", Message.of("fault.chamber"), false);
    if (chamber == null) {
      return null;
    }
    Node node = chamber.required("depth_mm", Message.of("fault.thickness"));
    Known known = KnownField.read(chamber, ofCase);
    chamber.rejectUnknown();
    if (node == null) {
      return null;
    }
    if (node instanceof Node.Mapping) {
      Range<Length> range = LayerFields.range(chamber.path("depth_mm"), node, DEPTH, faults);
      return range == null ? null : new ChamberDepth(range, Known.FILM);
    }
    Double mm = Fields.number(chamber.path("depth_mm"), node, DEPTH, faults);
    return mm == null ? null : ChamberDepth.read(Length.ofMillimetres(mm), known);
  }
}
