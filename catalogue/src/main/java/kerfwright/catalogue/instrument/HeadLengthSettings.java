package kerfwright.catalogue.instrument;

import java.util.List;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Head lengths where no source tells: compact heads by a ratio to the diameter, slender heads by
 * the length class of the shape. Project settings, every one, and named as such.
 */
final class HeadLengthSettings {
  private record Setting(
      ShapeFamily family,
      @Nullable LengthClass lengthClass,
      @Nullable Double ratio,
      @Nullable Length length,
      Basis basis) {}

  private static final List<Setting> ALL =
      Topic.read("head-length/values.csv", HeadLengthSettings::setting);

  private HeadLengthSettings() {}

  static HeadLength of(ShapeFamily family, LengthClass lengthClass, Length diameter) {
    for (Setting setting : ALL) {
      boolean fits = setting.lengthClass == null || setting.lengthClass == lengthClass;
      if (setting.family == family && fits) {
        Length length =
            setting.ratio != null
                ? new Length(diameter.metres() * setting.ratio)
                : setting.length == null ? diameter : setting.length;
        return new HeadLength(length, setting.basis);
      }
    }
    throw new IllegalStateException("No head length setting for " + family + " " + lengthClass);
  }

  private static Setting setting(DataRow row) {
    ShapeFamily family = row.requiredOneOf("family", ShapeFamily.class);
    LengthClass lengthClass =
        row.text("length_class").equals("any")
            ? null
            : row.oneOf("length_class", LengthClass.class);
    Double ratio = row.positive("ratio_to_diameter");
    Length length = row.millimetres("length_mm");
    if ((ratio == null) == (length == null)) {
      row.expected("length_mm", "either a ratio or a length");
    }
    return new Setting(family, lengthClass, ratio, length, row.provenance().basis());
  }
}
