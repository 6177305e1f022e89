package kerfwright.catalogue.number;

import static java.util.Objects.requireNonNull;

import kerfwright.catalogue.Remark;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentShape;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.instrument.Shapes;
import kerfwright.catalogue.instrument.WorkingPart;
import org.jspecify.annotations.Nullable;

/** Kind and shape of a row: columns, number and US size must agree. */
final class KindAndShape extends RowPart {
  KindAndShape(RowPart row) {
    super(row);
  }

  record ResolvedShape(ShapeFamily family, String name, InstrumentShape shape) {}

  @Nullable InstrumentKind kind() {
    InstrumentKind typed = read.kind(row.kind());
    WorkingPart part = number == null ? null : number.workingPart();
    if (number != null && number.rootCanal()) {
      read.fault("iso", row.at("iso"), Remark.of("number-not-root-canal"));
    }
    if (typed != null && us != null && !typed.bladed()) {
      read.fault("us", row.at("us"), Remark.of("us-blank-for-kind", typed));
    }
    boolean told = part != null && !part.kinds().isEmpty();
    if (typed != null) {
      if (told && !requireNonNull(part).kinds().contains(typed)) {
        read.fault(
            "kind",
            row.kind(),
            Remark.of("kind-of-number", part.group(), part.kinds()),
            part.kinds().get(0).id());
      }
      return typed;
    }
    if (told) {
      InstrumentKind first = requireNonNull(part).kinds().get(0);
      if (part.kinds().size() > 1
          && first != InstrumentKind.DIAMOND
          && first != InstrumentKind.SINTERED_DIAMOND) {
        assumed.add(Remark.of("kind-from-group", first, part.group()));
      }
      if (us != null && !first.bladed()) {
        read.fault("us", row.at("us"), Remark.of("us-blank-for-number", first));
      }
      return first;
    }
    if (!read.faulty("kind") && !read.faulty("iso")) {
      read.fault("kind", "", FieldReader.kinds("kind-needed"));
    }
    return null;
  }

  @Nullable ResolvedShape shape() {
    InstrumentShape typed = read.shape(row.at("shape"));
    InstrumentShape told = number == null || number.rootCanal() ? null : number.shape();
    InstrumentShape found = told != null ? told : typed;
    if (told != null && typed != null) {
      boolean sameCode = typed.code().isEmpty() || typed.code().equals(told.code());
      if (typed.family() != told.family() || !sameCode) {
        read.fault(
            "shape", row.at("shape"), Remark.of("shape-of-number", told.code(), told), told.code());
      }
    }
    if (us != null) {
      ShapeFamily other = found == null ? null : found.family();
      if (other != null && other != us.family() && !related(other, us.family())) {
        read.fault(
            number != null && told != null ? "us" : "shape",
            number != null && told != null ? row.at("us") : row.at("shape"),
            Remark.of("same-shape", us.number(), us.family(), other));
      }
      if (found == null) {
        String code = us.isoShape();
        found = code == null ? Shapes.ofFamily(us.family()) : Shapes.byCode(code).orElseThrow();
        noteMemory(
            us.provenance().basis(),
            "shape-from-us",
            us.family(),
            us.number(),
            us.provenance().basis());
        return new ResolvedShape(us.family(), us.shapeName(), found);
      }
    }
    if (found == null) {
      if (!read.faulty("shape") && !read.faulty("iso") && !read.faulty("us")) {
        read.fault(
            "shape",
            "",
            number == null
                ? Remark.of("shape-needed")
                : Remark.of("shape-unknown", number.number().shape()));
      }
      return null;
    }
    if (told != null) {
      noteMemory(
          told.provenance().basis(), "shape-read", told.code(), told, told.provenance().basis());
    }
    return new ResolvedShape(requireNonNull(found.family()), found.name(), found);
  }

  /** Pear forms share their codes loosely between long and short. */
  private static boolean related(ShapeFamily a, ShapeFamily b) {
    return pear(a) && pear(b);
  }

  private static boolean pear(ShapeFamily family) {
    return family == ShapeFamily.PEAR || family == ShapeFamily.PEAR_ELONGATED;
  }
}
