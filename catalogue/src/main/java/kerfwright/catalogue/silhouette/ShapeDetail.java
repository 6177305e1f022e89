package kerfwright.catalogue.silhouette;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import kerfwright.catalogue.instrument.InstrumentProperties;
import org.jspecify.annotations.Nullable;

/** Differences within a family that change the outline, told by the shape's name or its code. */
enum ShapeDetail {
  COLLAR(List.of("collar"), List.of("002")),
  BARREL(List.of("barrel"), List.of("038")),
  ROUNDED_EDGE(List.of("rounded edge"), List.of("068")),
  CONICAL(List.of("conical bud", "bullet", "grenade"), List.of("274")),
  DOUBLE_TAPER(List.of("double taper"), List.of("465")),
  ELONGATED(List.of("elongated"), List.of("225", "234")),
  PLAIN(List.of(), List.of());

  private final List<String> words;
  private final List<String> codes;

  ShapeDetail(List<String> words, List<String> codes) {
    this.words = words;
    this.codes = codes;
  }

  static ShapeDetail of(InstrumentProperties instrument) {
    String name = instrument.shapeName().toLowerCase(Locale.ROOT);
    String code = shapeCode(instrument.iso());
    return Arrays.stream(values())
        .filter(d -> d.codes.contains(code) || d.words.stream().anyMatch(name::contains))
        .findFirst()
        .orElse(PLAIN);
  }

  /** Third group of the full number, first group of the nine-digit form; empty where unknown. */
  private static String shapeCode(@Nullable String iso) {
    String digits = iso == null ? "" : iso.replaceAll("\\D", "");
    if (digits.length() == 15 || digits.length() == 18) {
      return digits.substring(6, 9);
    }
    return digits.length() == 9 ? digits.substring(0, 3) : "";
  }
}
