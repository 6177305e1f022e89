package kerfwright.app.web.caseform;

import java.util.List;
import kerfwright.planner.casework.Contradiction.Fix;

/**
 * Does in the form what a fix says of the file: changes one field, or leaves it to what is usual.
 */
public final class FormFix {
  private FormFix() {}

  /** The value of the button that does a fix. */
  static String button(Fix fix) {
    return "fix-" + fix.field() + (fix.value() == null ? "" : "=" + fix.value());
  }

  public static CaseForm of(CaseForm form, String fix) {
    int equals = fix.indexOf('=');
    String field = equals < 0 ? fix : fix.substring(0, equals);
    String value = equals < 0 ? "" : fix.substring(equals + 1);
    if (field.startsWith("layers[")) {
      return form.with("layer_known_" + field.replaceAll("[^0-9]", ""), value);
    }
    return switch (field) {
      case "layers" -> form.withRows(List.of());
      case "outline" -> form.with("outline_length_mm", "").with("outline_width_mm", "");
      case "chamber" -> form.with("chamber_depth_mm", "");
      case "lesion" -> form.with("lesion_depth", "").with("lesion_activity", "");
      default -> form.with(field, value);
    };
  }
}
