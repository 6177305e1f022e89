package kerfwright.app.casefile;

import java.util.Locale;
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
    String depth = lesion.oneOf("depth", "depth-of-decay", Lesion.Depth.ids(), true);
    String activity = lesion.oneOf("activity", "activity", Lesion.Activity.ids(), false);
    String texture = lesion.oneOf("texture", "texture", Lesion.Texture.ids(), false);
    lesion.rejectUnknown();
    return depth == null
        ? null
        : new Lesion(
            Lesion.Depth.valueOf(upper(depth)),
            activity == null ? Lesion.Activity.ACTIVE : Lesion.Activity.valueOf(upper(activity)),
            texture == null ? null : Lesion.Texture.valueOf(upper(texture)));
  }

  private static String upper(String id) {
    return id.toUpperCase(Locale.ROOT);
  }
}
