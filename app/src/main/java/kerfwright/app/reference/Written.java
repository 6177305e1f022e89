package kerfwright.app.reference;

import java.math.BigDecimal;
import java.math.MathContext;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.material.Property;
import kerfwright.catalogue.table.Numbers;
import kerfwright.quantity.Basis;
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
      @Nullable Double low, @Nullable Double typical, @Nullable Double high, String unit) {
    String ends = "";
    if (low != null && high != null) {
      ends = low.equals(high) ? "" : number(low) + " to " + number(high);
    } else if (low != null) {
      ends = "from " + number(low);
    } else if (high != null) {
      ends = "up to " + number(high);
    }
    if (typical == null && ends.isEmpty()) {
      return low == null ? "no figure" : number(low) + gap(unit);
    }
    if (typical == null) {
      return ends + gap(unit);
    }
    return ends.isEmpty()
        ? number(typical) + gap(unit)
        : number(typical) + " (" + ends + ")" + gap(unit);
  }

  public static String figures(Numbers numbers, String unit) {
    return figures(numbers.low(), numbers.typical(), numbers.high(), unit);
  }

  /** A thickness; a blank asks for it. */
  public static String millimetres(@Nullable Range<Length> range) {
    return range == null
        ? "not known: measure"
        : figures(rounded(range.low()), rounded(range.typical()), rounded(range.high()), "mm");
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

  public static String number(double value) {
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

  public static String property(String id) {
    return Property.of(id).map(Property::label).orElse(id);
  }

  /** The class of a mark for a standing: weaker ones stand out. */
  public static String mark(Basis basis) {
    return basis.name().toLowerCase(Locale.ROOT).replace('_', '-');
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

  /** Thousands set apart: "400 000 per min". */
  public static String grouped(String words) {
    return words.replaceAll("(\\d{2,3})(\\d{3}) per min", "$1\u00a0$2 per min");
  }

  public static String query(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  public static String spaced(String slug) {
    return slug.replace('-', ' ');
  }
}
