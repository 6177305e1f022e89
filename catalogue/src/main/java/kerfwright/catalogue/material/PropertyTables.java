package kerfwright.catalogue.material;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Numbers;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Identified;
import kerfwright.quantity.SourceKey;

/**
 * The two tables of properties.
 *
 * @param published published values
 * @param inputs what the models take
 */
record PropertyTables(List<PropertyTables.Published> published, List<ModelInput> inputs) {
  static final List<String> PUBLISHED =
      List.of(
          "id",
          "material",
          "quantity",
          "low",
          "typical",
          "high",
          "unit",
          "conditions",
          "source",
          "locator",
          "basis",
          "preferred",
          "note");
  static final List<String> INPUT =
      List.of(
          "id",
          "material",
          "quantity",
          "low",
          "typical",
          "high",
          "unit",
          "taken_from",
          "source",
          "locator",
          "basis",
          "note");

  /** A published row and the material it belongs to. */
  record Published(String materialId, PropertyValue value) {}

  /** Both tables of the materials on a list. */
  static PropertyTables read(
      List<Row> list, String publishedFile, String inputFile, Sources sources, Faults faults) {
    List<String> ids = list.stream().map(row -> row.text("id")).toList();
    List<Published> published =
        published(Table.read(publishedFile, PUBLISHED, faults), ids, sources);
    return new PropertyTables(
        published, inputs(Table.read(inputFile, INPUT, faults), ids, published, sources));
  }

  /** What the models take for one material. */
  List<ModelInput> inputsOf(String materialId) {
    return inputs.stream().filter(i -> i.materialId().equals(materialId)).toList();
  }

  static List<Published> published(List<Row> table, List<String> materials, Sources sources) {
    List<Published> rows = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (Row row : table) {
      String id = row.uniqueId("id", ids);
      String material = row.oneOf("material", materials);
      Optional<Property> property = property(row);
      Numbers numbers = row.numbers();
      Basis basis = row.basis();
      List<SourceKey> keys = sourced(row, sources, basis);
      boolean preferred = row.oneOf("preferred", List.of("yes", "no")).equals("yes");
      if (row.sound()) {
        rows.add(
            new Published(
                material,
                new PropertyValue(
                    id,
                    property.orElseThrow().id(),
                    numbers.low(),
                    numbers.typical(),
                    numbers.high(),
                    property.orElseThrow().unit(),
                    row.text("conditions"),
                    keys,
                    row.text("locator"),
                    basis,
                    preferred,
                    row.text("note"))));
      }
    }
    return rows;
  }

  static List<ModelInput> inputs(
      List<Row> table, List<String> materials, List<Published> published, Sources sources) {
    List<ModelInput> rows = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    Set<String> known = new HashSet<>();
    published.forEach(p -> known.add(p.value().id()));
    for (Row row : table) {
      String id = row.uniqueId("id", ids);
      String material = row.oneOf("material", materials);
      Optional<Property> property = property(row);
      Numbers numbers = row.numbers();
      if (!numbers.complete()) {
        row.fault("low", "low, typical and high must all be given: the models take this row");
      }
      Basis basis = row.basis();
      List<SourceKey> keys = sourced(row, sources, basis);
      List<String> takenFrom = row.list("taken_from");
      for (String from : takenFrom) {
        if (!known.contains(from)) {
          row.fault("taken_from", "'" + from + "' is no row of the published values");
        }
      }
      if (basis == Basis.PROJECT_SETTING && row.text("note").isEmpty()) {
        row.fault("note", "a value chosen by the project must say why");
      }
      if (row.sound()) {
        rows.add(
            new ModelInput(
                id,
                material,
                property.orElseThrow(),
                Objects.requireNonNull(numbers.low()),
                Objects.requireNonNull(numbers.typical()),
                Objects.requireNonNull(numbers.high()),
                takenFrom,
                keys,
                basis,
                row.text("note")));
      }
    }
    return rows;
  }

  private static Optional<Property> property(Row row) {
    Optional<Property> property = Identified.of(Property.class, row.text("quantity"));
    if (property.isEmpty()) {
      row.fault("quantity", "'" + row.text("quantity") + "' is no known property");
    } else if (!row.text("unit").equals(property.get().unit())) {
      row.fault("unit", "'" + row.text("unit") + "' must be " + property.get().unit());
    }
    return property;
  }

  private static List<SourceKey> sourced(Row row, Sources sources, Basis basis) {
    List<SourceKey> keys = sources.keys(row, "source");
    if (keys.isEmpty() && basis != Basis.PROJECT_SETTING) {
      row.fault("source", "must name a source, or the basis must be project-setting");
    }
    return keys;
  }
}
