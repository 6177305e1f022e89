package kerfwright.app.reference;

import java.math.BigDecimal;
import java.math.MathContext;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.Confidence;
import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Property;
import kerfwright.catalogue.table.Numbers;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Identified;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/** How reference figures, units and links are written. */
public final class Written {
  private static final MathContext DIGITS = new MathContext(4);

  private Written() {}

  /** "3.5 (3 to 4.1) GPa"; "up to 4.1 GPa"; "unknown". */
  public static String figures(
      Say say, @Nullable Double low, @Nullable Double typical, @Nullable Double high, String unit) {
    String ends = "";
    if (low != null && high != null) {
      ends = low.equals(high) ? "" : range(say, low, high);
    } else if (low != null) {
      ends = say.at("reference.from", number(say, low));
    } else if (high != null) {
      ends = say.at("reference.up-to", number(say, high));
    }
    if (typical == null && ends.isEmpty()) {
      return low == null ? say.at("reference.no-figure") : number(say, low) + gap(unit);
    }
    if (typical == null) {
      return ends + gap(unit);
    }
    return ends.isEmpty()
        ? number(say, typical) + gap(unit)
        : number(say, typical) + " (" + ends + ")" + gap(unit);
  }

  public static String figures(Say say, Numbers numbers, String unit) {
    return figures(say, numbers.low(), numbers.typical(), numbers.high(), unit);
  }

  /** A thickness; a blank asks for it. */
  public static String millimetres(Say say, @Nullable Range<Length> range) {
    return range == null
        ? say.at("reference.measure")
        : figures(say, rounded(range.low()), rounded(range.typical()), rounded(range.high()), "mm");
  }

  private static double rounded(Length length) {
    return Math.rint(length.millimetres() * 1000) / 1000;
  }

  private static String gap(String unit) {
    String sign = unit(unit);
    return sign.isEmpty() ? "" : "\u00a0" + sign;
  }

  /** A unit of the tables as people write it. */
  public static String unit(String unit) {
    return switch (unit) {
      case "1", "none" -> "";
      case "MPa*m^0.5" -> "MPa\u221am";
      case "degC" -> "\u00b0C";
      case "um" -> "\u00b5m";
      case "1/um" -> "1/\u00b5m";
      case "um^-0.5" -> "1/\u221a\u00b5m";
      case "m2/s" -> "m\u00b2/s";
      case "kg/m3" -> "kg/m\u00b3";
      case "W/mK" -> "W/(m\u00a0K)";
      case "J/kgK" -> "J/(kg\u00a0K)";
      case "J/mm3" -> "J/mm\u00b3";
      case "mm3" -> "mm\u00b3";
      case "mm3/min" -> "mm\u00b3/min";
      case "mm3/s" -> "mm\u00b3/s";
      default -> unit;
    };
  }

  /** "3 to 4.1". */
  public static String range(Say say, double low, double high) {
    return say.at("reference.range", number(say, low), number(say, high));
  }

  public static String number(Say say, double value) {
    return say.figures(number(value));
  }

  private static String number(double value) {
    if (value == 0) {
      return "0";
    }
    BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
    double size = Math.abs(value);
    if (size < 1e-3) {
      return String.format(Locale.ROOT, "%.2e", value).replaceFirst("e-0?(\\d+)", " \u00d7 10^-$1");
    }
    String plain = rounded.toPlainString();
    return size >= 10_000 && rounded.scale() <= 0
        ? String.format(Locale.ROOT, "%,d", rounded.longValue()).replace(',', '\u00a0')
        : plain;
  }

  /** A property by its id; one only an article measured keeps its id. */
  public static String property(Say say, String id) {
    return Identified.of(Property.class, id).map(one -> property(say, one)).orElse(id);
  }

  public static String property(Say say, Property property) {
    return say.at("reference.property-" + property.id());
  }

  /** "[seen, high confidence; standards-s07]". */
  public static String standing(Say say, Provenance of) {
    String sure = Labels.basis(say, of.basis()) + ", " + confidence(say, of.confidence());
    return standing(sure, of.sources());
  }

  /** "[seen; standards-s07]". */
  public static String standing(Say say, Basis basis, List<SourceKey> sources) {
    return standing(Labels.basis(say, basis), sources);
  }

  private static String standing(String sure, List<SourceKey> sources) {
    String keys = sources.stream().map(SourceKey::key).collect(Collectors.joining(", "));
    return "[" + sure + (keys.isEmpty() ? "" : "; " + keys) + "]";
  }

  /** The class of a mark for a standing: weaker ones stand out. */
  public static String mark(Basis basis) {
    return basis.id();
  }

  /** Where the register tells of a source. */
  public static String href(SourceKey key) {
    return "/reference/source?key=" + key.key();
  }

  public static String material(String id) {
    return "/reference/material?id=" + id;
  }

  /** The remark of a row; the standing of a column is shown beside that column instead. */
  public static String note(Provenance of) {
    return of.note().replaceAll("[.;]? ?usual_use: common practice", "").strip();
  }

  /** The group a material belongs to. */
  public static String group(Say say, Material.Group group) {
    return say.at("reference.group-" + group.id());
  }

  /** How sure the catalogue is of a row. */
  public static String confidence(Say say, Confidence confidence) {
    return say.at("reference.confidence-" + confidence.id());
  }

  public static String query(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  public static String spaced(String slug) {
    return slug.replace('-', ' ');
  }
}
