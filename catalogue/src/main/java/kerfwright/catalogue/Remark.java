package kerfwright.catalogue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentShape;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.material.Material;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;

/**
 * Something the catalogue says to a user.
 *
 * @param code which saying it is, stable
 * @param text the saying in English, for the command line and for files
 * @param values what it names: words as they are, numbers, lengths, things with a label, other
 *     remarks and messages, or lists of these
 */
public record Remark(String code, String text, List<Object> values) {
  public Remark {
    values = List.copyOf(values);
  }

  public static Remark of(String code, String text, Object... values) {
    return new Remark(code, text, List.of(values));
  }

  /** The same without its words, for whoever says it in another language. */
  public Message message() {
    return Message.of("remark." + code, values.stream().map(Remark::value).toArray());
  }

  private static Object value(Object value) {
    if (value instanceof Remark remark) {
      return remark.message();
    }
    if (value instanceof List<?> several) {
      boolean labels = several.stream().noneMatch(Remark.class::isInstance);
      List<Object> all = several.stream().map(Remark::value).toList();
      return labels
          ? all.stream().reduce((a, b) -> Message.of("remark.and", a, b)).orElse("")
          : all;
    }
    if (value instanceof Length length) {
      BigDecimal mm = places(length.millimetres(), 2);
      return Message.of("remark.mm", mm.scale() < 1 ? mm.setScale(1) : mm);
    }
    if (value instanceof Long number) {
      return Math.toIntExact(number);
    }
    if (value instanceof Double number) {
      double size = Math.abs(number);
      return size >= 1000
          ? Integer.valueOf((int) Math.round(number))
          : places(number, size >= 10 ? 1 : 2);
    }
    String label = label(value);
    return label.isEmpty() ? value : Message.of("label." + label);
  }

  private static BigDecimal places(double value, int places) {
    BigDecimal plain = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_EVEN);
    BigDecimal shortest = plain.stripTrailingZeros();
    return shortest.scale() < 0 ? shortest.setScale(0) : shortest;
  }

  /** The name of what has a label; empty for words and numbers. */
  private static String label(Object value) {
    if (value instanceof InstrumentKind kind) {
      return "kind-" + kind.id();
    }
    if (value instanceof ShapeFamily family) {
      return "shape-" + family.id();
    }
    if (value instanceof InstrumentShape shape) {
      ShapeFamily family = shape.family();
      return shape.code().isEmpty() && family != null
          ? "shape-" + family.id()
          : "shape-" + shape.code();
    }
    if (value instanceof GritClass grit) {
      return "grit-" + grit.id();
    }
    if (value instanceof ShankType shank) {
      return "shank-" + shank.id();
    }
    if (value instanceof Material material) {
      return "material-" + material.id();
    }
    return value instanceof Basis basis ? "basis-" + basis.id() : "";
  }

  @Override
  public String toString() {
    return text;
  }
}
