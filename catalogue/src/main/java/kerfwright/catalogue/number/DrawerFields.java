package kerfwright.catalogue.number;

import java.util.List;
import java.util.Map;

/**
 * The columns of a drawer list that say what an instrument is, as typed; any may be blank. Their
 * names are those of the drawer file: kind, iso, us, shape, grit, blades, head_mm, head_length_mm,
 * shank, overall_mm, max_rpm, safe_end, abrasive.
 */
public record DrawerFields(
    String kind,
    String iso,
    String us,
    String shape,
    String grit,
    String blades,
    String headMm,
    String headLengthMm,
    String shank,
    String overallMm,
    String maxRpm,
    String safeEnd,
    String abrasive) {
  /** Names of the columns, in the order of the components. */
  public static final List<String> COLUMNS =
      List.of(
          "kind",
          "iso",
          "us",
          "shape",
          "grit",
          "blades",
          "head_mm",
          "head_length_mm",
          "shank",
          "overall_mm",
          "max_rpm",
          "safe_end",
          "abrasive");

  public DrawerFields {
    kind = kind.strip();
    iso = iso.strip();
    us = us.strip();
    shape = shape.strip();
    grit = grit.strip();
    blades = blades.strip();
    headMm = headMm.strip();
    headLengthMm = headLengthMm.strip();
    shank = shank.strip();
    overallMm = overallMm.strip();
    maxRpm = maxRpm.strip();
    safeEnd = safeEnd.strip();
    abrasive = abrasive.strip();
  }

  /** From a row by column name; a column that is missing is blank, other columns are left alone. */
  public static DrawerFields of(Map<String, String> row) {
    return new DrawerFields(
        row.getOrDefault("kind", ""),
        row.getOrDefault("iso", ""),
        row.getOrDefault("us", ""),
        row.getOrDefault("shape", ""),
        row.getOrDefault("grit", ""),
        row.getOrDefault("blades", ""),
        row.getOrDefault("head_mm", ""),
        row.getOrDefault("head_length_mm", ""),
        row.getOrDefault("shank", ""),
        row.getOrDefault("overall_mm", ""),
        row.getOrDefault("max_rpm", ""),
        row.getOrDefault("safe_end", ""),
        row.getOrDefault("abrasive", ""));
  }

  /** The field in a column. */
  public String at(String name) {
    return switch (name) {
      case "iso" -> iso();
      case "us" -> us();
      case "kind" -> kind();
      case "shape" -> shape();
      case "grit" -> grit();
      case "blades" -> blades();
      case "head_mm" -> headMm();
      case "head_length_mm" -> headLengthMm();
      case "shank" -> shank();
      case "overall_mm" -> overallMm();
      case "max_rpm" -> maxRpm();
      case "safe_end" -> safeEnd();
      case "abrasive" -> abrasive();
      default -> throw new IllegalArgumentException(name);
    };
  }
}
