package kerfwright.catalogue.number;

import static java.util.Objects.requireNonNull;

import kerfwright.catalogue.Remark;
import kerfwright.catalogue.instrument.HeadLength;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.Shank;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.Shanks;
import kerfwright.catalogue.instrument.Shapes;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/** Head diameter and length, shank and overall length of a row. */
final class Dimensions extends RowPart {
  /**
   * Head diameters further apart than this contradict (tolerance of the bur table, standards-s11).
   */
  private static final double DIAMETER_TOLERANCE_MM = 0.06;

  /** Overall lengths further apart than this contradict; texts round 19 and 22 mm to 20 mm. */
  private static final double OVERALL_TOLERANCE_MM = 2.5;

  Dimensions(RowPart row) {
    super(row);
  }

  @Nullable Length diameter(@Nullable InstrumentKind kind) {
    Double typed = read.number("head_mm", row.at("head_mm"), 0.1, 30, " mm");
    Double told = numberDiameterMm(kind);
    Double listed = us == null ? null : us.headDiameter().millimetres();
    if (typed != null && told != null && apart(typed, told)) {
      read.fault(
          "head_mm",
          row.at("head_mm"),
          Remark.of("head-of-number", number().number().size(), Length.ofMillimetres(told)),
          plain(told));
    }
    if (typed != null && told == null && listed != null && apart(typed, listed)) {
      read.fault(
          "head_mm",
          row.at("head_mm"),
          Remark.of("head-of-us", us().number(), Length.ofMillimetres(listed)),
          plain(listed));
    }
    if (told != null && listed != null && apart(told, listed)) {
      read.fault(
          "us",
          row.at("us"),
          Remark.of(
              "same-diameter",
              Length.ofMillimetres(told),
              us().number(),
              Length.ofMillimetres(listed)));
    }
    if (typed != null) {
      return Length.ofMillimetres(typed);
    }
    if (told != null) {
      return Length.ofMillimetres(told);
    }
    if (listed != null) {
      noteMemory(
          us().provenance().basis(),
          "head-from-us",
          Length.ofMillimetres(listed),
          us().number(),
          us().provenance().basis());
      return Length.ofMillimetres(listed);
    }
    if (!read.faulty("head_mm") && !read.faulty("iso") && !read.faulty("us")) {
      read.fault("head_mm", "", Remark.of("head-needed"));
    }
    return null;
  }

  /** Tenths of a millimetre, unless the number may be one of a root-canal instrument. */
  private @Nullable Double numberDiameterMm(@Nullable InstrumentKind kind) {
    if (number == null || number.rootCanal()) {
      return null;
    }
    boolean rotary =
        number.size().rule() == NumberSize.Rule.TENTHS
            || kind != null && kind != InstrumentKind.STEEL
            || us != null
            || !row.at("shape").isEmpty();
    double tenths = number.size().tenths().millimetres();
    return rotary && tenths > 0 ? tenths : null;
  }

  @Nullable ShankType shank() {
    ShankType typed = read.shank(row.at("shank"));
    String code = number == null ? null : number.number().shank();
    if (code == null || number == null) {
      if (typed == null && !read.faulty("shank") && !read.faulty("iso")) {
        read.fault("shank", "", Remark.of("shank-known"));
      }
      return typed;
    }
    Shank exact = number.shank();
    Shank known = exact != null ? exact : number.shankFamily();
    ShankType told = known == null ? null : known.type();
    if (exact != null && told == null) {
      read.fault("iso", row.at("iso"), Remark.of("number-shank", code));
      return typed;
    }
    if (typed != null && told != null && typed != told) {
      read.fault("shank", row.at("shank"), Remark.of("shank-of-number", code, told), told.name());
    }
    if (typed == null && told == null && !read.faulty("shank")) {
      read.fault("shank", "", Remark.of("shank-unknown", code));
    }
    return typed != null ? typed : told;
  }

  @Nullable Length overall(@Nullable ShankType shank) {
    Double typed = read.number("overall_mm", row.at("overall_mm"), 8, 120, " mm");
    Shank exact = number == null ? null : number.shank();
    Length told = exact == null ? null : exact.overallLength();
    boolean fromMemory = exact != null && exact.lengthBasis() == Basis.FROM_MEMORY;
    if (typed != null) {
      if (told != null
          && !fromMemory
          && Math.abs(told.millimetres() - typed) > OVERALL_TOLERANCE_MM) {
        read.fault(
            "overall_mm",
            row.at("overall_mm"),
            Remark.of("overall-of-number", requireNonNull(exact).code(), told),
            plain(told.millimetres()));
      }
      return Length.ofMillimetres(typed);
    }
    if (read.faulty("overall_mm") || shank == null) {
      return null;
    }
    if (told != null && !fromMemory) {
      return told;
    }
    String code = number == null ? null : number.number().shank();
    if (code != null) {
      read.fault(
          "overall_mm",
          "",
          told == null
              ? Remark.of("overall-unknown", code)
              : Remark.of("overall-measured", code, told));
      return null;
    }
    Length standard = requireNonNull(Shanks.standard(shank).overallLength());
    assumed.add(Remark.of("overall-standard", standard, shank.name()));
    return standard;
  }

  @Nullable Length headLength(
      KindAndShape.@Nullable ResolvedShape shape,
      @Nullable Length diameter,
      @Nullable Length overall) {
    Double typed = read.number("head_length_mm", row.at("head_length_mm"), 0.05, 60, " mm");
    Length length = typed == null ? null : Length.ofMillimetres(typed);
    if (typed == null && !read.faulty("head_length_mm") && shape != null && diameter != null) {
      Length listed = us == null ? null : us.headLength();
      if (listed != null) {
        noteMemory(
            us().provenance().basis(),
            "head-length-from-us",
            listed,
            us().number(),
            us().provenance().basis());
        length = listed;
      } else {
        HeadLength usual = Shapes.usualHeadLength(shape.shape(), diameter);
        length = usual.length();
        assumed.add(
            Remark.of(
                "head-length-usual",
                length,
                shape.shape().name().equals(shape.name()) ? shape.shape() : shape.family(),
                usual.basis()));
      }
    }
    if (length != null && overall != null && length.compareTo(overall) >= 0) {
      read.fault(
          "head_length_mm", row.at("head_length_mm"), Remark.of("head-length-below", overall));
    }
    return length;
  }

  private static boolean apart(double a, double b) {
    return Math.abs(a - b) > DIAMETER_TOLERANCE_MM;
  }
}
