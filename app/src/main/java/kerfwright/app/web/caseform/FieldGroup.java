package kerfwright.app.web.caseform;

import java.util.List;
import kerfwright.quantity.Identified;

/**
 * Fields of the form that are filled in together. What they were filled in with is kept beside
 * them, so that a usual value is exchanged when tooth or procedure change, and a typed one is not.
 */
enum FieldGroup implements Identified {
  RESTORATION(List.of("restoration")),
  INTENDED(List.of("intended")),
  LESION(List.of("lesion_depth", "lesion_activity", "lesion_texture")),
  LAYERS(List.of("layer_material", "layer_low", "layer_typical", "layer_high")),
  OUTLINE(List.of("outline_shape", "outline_length_mm", "outline_width_mm"));

  private final List<String> names;

  FieldGroup(List<String> names) {
    this.names = names;
  }

  /** The hidden field that says what the group was filled in with. */
  String mark() {
    return "usual_" + id();
  }

  /** Short for what stands in the group; empty where nothing does. */
  String content(CaseForm form) {
    StringBuilder all = new StringBuilder();
    boolean blank = true;
    for (String name : names) {
      for (String value : form.all(name)) {
        blank &= value.isBlank();
        all.append(name).append('=').append(value.strip()).append('\n');
      }
    }
    return blank ? "" : Integer.toHexString(all.toString().hashCode());
  }

  /** Whether nobody has typed here: it is blank, or as it was filled in. */
  boolean untouched(CaseForm form) {
    String content = content(form);
    return content.isEmpty() || content.equals(form.value(mark()));
  }

  /** The form with the content of this group marked as filled in. */
  CaseForm marked(CaseForm form) {
    return form.with(mark(), content(form));
  }
}
