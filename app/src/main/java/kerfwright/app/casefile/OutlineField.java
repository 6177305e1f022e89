package kerfwright.app.casefile;

import java.math.BigDecimal;
import kerfwright.app.input.Bounds;
import kerfwright.app.input.Fields;
import kerfwright.planner.casework.Outline;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/** The field {@code outline}; a circle may give its diameter alone. */
final class OutlineField {
  private static final Bounds SIDE = Bounds.above(0, 60, "mm");

  private OutlineField() {}

  static @Nullable Outline read(Fields fields) {
    Fields outline = fields.fields("outline", Message.of("fault.outline"), false);
    if (outline == null) {
      return null;
    }
    Outline.Shape shape = outline.oneOf("shape", "shape", Outline.Shape.class, true);
    boolean circle = shape == Outline.Shape.CIRCLE;
    boolean byDiameter = circle && outline.optional("diameter_mm") != null;
    Double length = outline.number(byDiameter ? "diameter_mm" : "length_mm", SIDE, true);
    Double width = byDiameter ? length : outline.number("width_mm", SIDE, true);
    outline.rejectUnknown();
    if (shape == null || length == null || width == null) {
      return null;
    }
    if (circle && !length.equals(width)) {
      outline.fault("width_mm", Message.of("fault.circle"));
      return null;
    }
    if (width > length) {
      outline.fault(
          "width_mm",
          Message.of("fault.shorter", BigDecimal.valueOf(width), BigDecimal.valueOf(length)));
      return null;
    }
    return new Outline(shape, Length.ofMillimetres(length), Length.ofMillimetres(width));
  }
}
