package kerfwright.catalogue.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import kerfwright.catalogue.Confidence;
import kerfwright.catalogue.NearestName;
import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/** Shapes of working parts by ISO 6360 code and by name. */
public final class Shapes {
  private static final List<InstrumentShape> ALL = Topic.read("shape/values.csv", Shapes::shape);
  private static final Provenance FAMILY_ONLY =
      new Provenance(
          List.of(SourceKey.COMMON_PRACTICE),
          "name",
          Basis.COMMON_PRACTICE,
          Confidence.MEDIUM,
          "named without a code");
  private static final Map<String, InstrumentShape> BY_CODE =
      ALL.stream().collect(Collectors.toMap(InstrumentShape::code, shape -> shape));

  private Shapes() {}

  public static List<InstrumentShape> all() {
    return ALL;
  }

  /** The shape with these digits 7 to 9, if the catalogue has it. */
  public static Optional<InstrumentShape> byCode(String code) {
    return Optional.ofNullable(BY_CODE.get(code.strip()));
  }

  /**
   * A shape by its name. The name of a family, or a name several codes share, gives a shape without
   * a code: which of them is meant is not guessed.
   */
  public static Optional<InstrumentShape> byName(String name) {
    String wanted = folded(name);
    for (ShapeFamily family : ShapeFamily.values()) {
      if (folded(family.label()).equals(wanted)) {
        return Optional.of(ofFamily(family));
      }
    }
    List<InstrumentShape> named =
        all().stream().filter(shape -> folded(shape.name()).equals(wanted)).toList();
    return named.size() > 1 ? Optional.of(withoutCode(named.get(0))) : named.stream().findFirst();
  }

  /** By code or by name, as a drawer list may give either. */
  public static Optional<InstrumentShape> find(String codeOrName) {
    Optional<InstrumentShape> byCode = byCode(codeOrName);
    return byCode.isPresent() ? byCode : byName(codeOrName);
  }

  /** A shape of which only the family is known. */
  public static InstrumentShape ofFamily(ShapeFamily family) {
    return new InstrumentShape(
        "", family.label(), family, LengthClass.STANDARD, null, null, FAMILY_ONLY);
  }

  private static InstrumentShape withoutCode(InstrumentShape shape) {
    return new InstrumentShape(
        "", shape.name(), shape.family(), shape.lengthClass(), null, null, FAMILY_ONLY);
  }

  /** Valid names and codes nearest to what was typed. */
  public static List<String> suggestions(String typed) {
    List<String> names = new ArrayList<>();
    for (ShapeFamily family : ShapeFamily.values()) {
      names.add(family.label());
    }
    for (InstrumentShape shape : all()) {
      if (!shape.rootCanal()) {
        names.add(shape.name());
        names.add(shape.code());
      }
    }
    return NearestName.suggestions(typed, names, 3);
  }

  /**
   * Usual head length of a shape: the one read for it, else a project setting by family and length
   * class, which {@link HeadLength#assumed()} tells.
   */
  public static HeadLength usualHeadLength(InstrumentShape shape, Length diameter) {
    ShapeFamily family = shape.family();
    if (family == null) {
      throw new IllegalArgumentException(
          "Root-canal shape " + shape.code() + " has no head length");
    }
    Length usual = shape.usualHeadLength();
    Basis basis = shape.headLengthBasis();
    return usual != null && basis != null
        ? new HeadLength(usual, basis)
        : HeadLengthSettings.of(family, shape.lengthClass(), diameter);
  }

  private static String folded(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_,-]+", " ");
  }

  private static InstrumentShape shape(DataRow row) {
    @Nullable ShapeFamily family =
        row.text("family").equals("root-canal")
            ? null
            : row.requiredOneOf("family", ShapeFamily.class);
    LengthClass lengthClass = row.requiredOneOf("length_class", LengthClass.class);
    Length length = row.millimetres("usual_head_length_mm");
    Basis basis = row.oneOf("head_length_basis", Basis.class);
    if ((length != null) != (basis != null)) {
      row.expected("head_length_basis", "a basis just where a length is");
    }
    return new InstrumentShape(
        row.group("code"),
        row.required("name"),
        family,
        lengthClass,
        length,
        basis,
        row.provenance());
  }
}
