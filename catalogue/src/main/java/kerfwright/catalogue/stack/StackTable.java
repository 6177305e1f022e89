package kerfwright.catalogue.stack;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Numbers;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/** Reads the files of the usual stacks. */
final class StackTable {
  private static final List<String> HEADER =
      List.of(
          "id",
          "restoration",
          "place",
          "tooth",
          "arch",
          "order",
          "material",
          "low",
          "typical",
          "high",
          "unit",
          "arithmetic",
          "taken_from",
          "source",
          "locator",
          "basis",
          "note");
  private static final List<String> PLACES =
      List.of("occlusal", "fossa", "facial", "lingual", "post");
  private static final List<String> TEETH = List.of("incisor", "canine", "premolar", "molar");
  private static final List<String> PROCEDURE_HEADER =
      List.of(
          "procedure",
          "back_tooth",
          "front_tooth",
          "teeth",
          "restoration",
          "intended",
          "lesion",
          "holds",
          "outer",
          "pulp");

  private static final List<String> BRANCH_HEADER =
      List.of(
          "id",
          "restoration",
          "procedures",
          "branch",
          "becomes",
          "source",
          "locator",
          "basis",
          "note");

  private StackTable() {}

  /** A restoration: its name for people and the materials it is known by. */
  record Restoration(String label, List<String> layers) {}

  static Map<String, Restoration> restorations(Materials materials, Faults faults) {
    Map<String, Restoration> all = new LinkedHashMap<>();
    Set<String> seen = new HashSet<>();
    for (Row row : Table.read("stack/restorations.csv", List.of("id", "label", "layers"), faults)) {
      all.put(
          row.uniqueId("id", seen),
          new Restoration(row.required("label"), ids(row, "layers", materials.ids())));
    }
    return all;
  }

  static List<Branch> branches(List<String> restorations, Sources sources, Faults faults) {
    List<Branch> all = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Row row : Table.read("stack/branches.csv", BRANCH_HEADER, faults)) {
      all.add(
          new Branch(
              row.uniqueId("id", seen),
              row.oneOf("restoration", restorations),
              row.list("procedures"),
              row.oneOf("branch", restorations),
              row.text("becomes"),
              sources.keys(row, "source"),
              row.basis()));
    }
    return all;
  }

  static Map<String, UsualProcedure> procedures(
      List<String> restorations, Materials materials, Faults faults) {
    Map<String, UsualProcedure> all = new LinkedHashMap<>();
    Set<String> seen = new HashSet<>();
    List<String> words = new ArrayList<>(materials.ids());
    materials.all().forEach(m -> m.traits().forEach(trait -> words.add("#" + trait)));
    for (Row row : Table.read("stack/procedures.csv", PROCEDURE_HEADER, faults)) {
      UsualProcedure one =
          new UsualProcedure(
              row.uniqueId("procedure", seen),
              row.oneOf("back_tooth", PLACES),
              row.oneOf("front_tooth", PLACES),
              ids(row, "teeth", TEETH),
              row.oneOf("restoration", restorations),
              row.list("intended"),
              row.oneOf("lesion", List.of("yes", "no")).equals("yes"),
              ids(row, "holds", words),
              ids(row, "outer", words),
              row.oneOf("pulp", List.of("", "vital", "non-vital")));
      all.put(one.id(), one);
    }
    return all;
  }

  private static List<String> ids(Row row, String column, List<String> known) {
    List<String> ids = row.list(column);
    for (String id : ids) {
      if (!known.containsAll(List.of(id.split("\\|")))) {
        row.fault(column, "'" + id + "' must be one of " + String.join(", ", known));
      }
    }
    return ids;
  }

  static List<StackRow> rows(
      List<String> restorations,
      Anatomy anatomy,
      Materials materials,
      Sources sources,
      Faults faults) {
    List<StackRow> rows = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Row row : Table.read("stack/values.csv", HEADER, faults)) {
      row.uniqueId("id", seen);
      String restoration = row.oneOf("restoration", restorations);
      String place = row.oneOf("place", PLACES);
      String tooth = row.oneOf("tooth", List.of("incisor", "canine", "premolar", "molar", "any"));
      String arch = row.oneOf("arch", List.of("maxillary", "mandibular", "any"));
      Double order = row.number("order");
      if (order == null) {
        row.fault("order", "must be given");
      }
      String material = row.oneOf("material", materials.ids());
      row.oneOf("unit", List.of("mm"));
      Range<Length> thickness = thickness(row);
      Basis basis = row.basis();
      List<SourceKey> keys = sources.keys(row, "source");
      if (keys.isEmpty() && basis != Basis.PROJECT_SETTING) {
        row.fault("source", "must name a source, or the basis must be project-setting");
      }
      List<String> takenFrom = row.list("taken_from");
      for (String from : takenFrom) {
        if (!anatomy.has(from)) {
          row.fault("taken_from", "'" + from + "' is no row of the anatomy or restoration table");
        }
      }
      if (row.sound() && order != null) {
        rows.add(
            new StackRow(
                restoration,
                place,
                tooth,
                arch,
                order.intValue(),
                new UsualLayer(
                    material,
                    thickness,
                    row.text("arithmetic"),
                    takenFrom,
                    keys,
                    basis,
                    row.text("note"))));
      }
    }
    return rows;
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
