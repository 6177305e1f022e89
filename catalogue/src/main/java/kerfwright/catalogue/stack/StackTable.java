package kerfwright.catalogue.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.table.Numbers;
import kerfwright.catalogue.table.Row;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;
import org.jspecify.annotations.Nullable;

/** Reads the files of the usual stacks. */
final class StackTable {
  private static final List<String> PLACES =
      List.of("occlusal", "fossa", "facial", "lingual", "post");
  private static final List<String> TEETH = List.of("incisor", "canine", "premolar", "molar");

  private StackTable() {}

  /** A restoration: its name for people and the materials it is known by. */
  record Restoration(String id, String label, List<String> layers) {}

  static Restoration restoration(DataRow row) {
    return new Restoration(
        row.text("id"), row.required("label"), ids(row, "layers", Materials.packaged().ids()));
  }

  static Branch branch(DataRow row, Set<String> restorations) {
    return new Branch(
        row.text("id"),
        row.oneOf("restoration", restorations),
        row.list("procedures"),
        row.oneOf("branch", restorations),
        row.text("becomes"),
        row.keys("source"),
        row.basis());
  }

  static UsualProcedure procedure(DataRow row, Set<String> restorations) {
    List<String> words = new ArrayList<>(Materials.packaged().ids());
    Materials.packaged().all().forEach(m -> m.traits().forEach(trait -> words.add("#" + trait)));
    return new UsualProcedure(
        row.required("procedure"),
        row.oneOf("back_tooth", PLACES),
        row.oneOf("front_tooth", PLACES),
        ids(row, "teeth", TEETH),
        row.oneOf("restoration", restorations),
        row.list("intended"),
        row.oneOf("lesion", List.of("yes", "no")).equals("yes"),
        ids(row, "holds", words),
        ids(row, "outer", words),
        row.oneOf("pulp", List.of("", "vital", "non-vital")));
  }

  private static List<String> ids(DataRow row, String column, List<String> known) {
    List<String> ids = row.list(column);
    for (String id : ids) {
      if (!known.containsAll(List.of(id.split("\\|")))) {
        row.fault(column, "'" + id + "' must be one of " + String.join(", ", known));
      }
    }
    return ids;
  }

  static StackRow row(DataRow row, Set<String> restorations) {
    Basis basis = row.basis();
    List<String> takenFrom = row.list("taken_from");
    for (String from : takenFrom) {
      if (!Anatomy.packaged().has(from)) {
        row.fault("taken_from", "'" + from + "' is no row of the anatomy or restoration table");
      }
    }
    row.oneOf("unit", List.of("mm"));
    return new StackRow(
        row.oneOf("restoration", restorations),
        row.oneOf("place", PLACES),
        row.oneOf("tooth", List.of("incisor", "canine", "premolar", "molar", "any")),
        row.oneOf("arch", List.of("maxillary", "mandibular", "any")),
        (int) row.requiredPositive("order"),
        new UsualLayer(
            row.oneOf("material", Materials.packaged().ids()),
            thickness(row),
            row.text("arithmetic"),
            takenFrom,
            row.sources(basis),
            basis,
            row.text("note")));
  }

  private static @Nullable Range<Length> thickness(Row row) {
    Numbers numbers = row.numbers();
    Double low = numbers.low();
    Double typical = numbers.typical();
    Double high = numbers.high();
    if (low != null && typical != null && high != null && low > 0 && row.sound()) {
      return new Range<>(
          Length.ofMillimetres(low), Length.ofMillimetres(typical), Length.ofMillimetres(high));
    }
    if (low != null || typical != null || high != null) {
      row.fault("low", "low, typical and high must all be above zero, or all be blank");
    } else if (row.text("note").isEmpty()) {
      row.fault("note", "a layer with no thickness must say why");
    }
    return null;
  }
}
