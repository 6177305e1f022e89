package kerfwright.app.casefile;

import kerfwright.app.input.Fields;
import kerfwright.planner.casework.Lesion;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/** The field {@code lesion}: depth, activity and, where it was felt, texture. */
final class LesionField {
  private LesionField() {}

  static @Nullable Lesion read(Fields fields) {
    Fields lesion = fields.fields("lesion", Message.of("fault.lesion"), false);
    if (lesion == null) {
      return null;
    }
    Lesion.Depth depth = lesion.oneOf("depth", "depth-of-decay", Lesion.Depth.class, true);
    Lesion.Activity activity = lesion.oneOf("activity", "activity", Lesion.Activity.class, false);
    Lesion.Texture texture = lesion.oneOf("texture", "texture", Lesion.Texture.class, false);
    lesion.rejectUnknown();
    return depth == null
        ? null
        : new Lesion(depth, activity == null ? Lesion.Activity.ACTIVE : activity, texture);
  }
}
