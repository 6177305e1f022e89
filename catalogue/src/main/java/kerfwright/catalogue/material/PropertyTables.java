package kerfwright.catalogue.material;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Numbers;
import kerfwright.catalogue.table.Table;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Identified;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * The two tables of properties.
 *
 * @param published published values
 * @param inputs what the models take
 */
record PropertyTables(List<PropertyTables.Published> published, List<ModelInput> inputs) {
  /** A published row and the material it belongs to. */
  record Published(String materialId, PropertyValue value) {}

  /** Both tables of the materials on a list. */
  static PropertyTables read(String list, String publishedFile, String inputFile, Faults faults) {
    List<String> ids = Table.read(list, faults).stream().map(row -> row.text("id")).toList();
    List<Published> published = Topic.read(publishedFile, faults, row -> published(row, ids));
    Set<String> known = published.stream().map(p -> p.value().id()).collect(Collectors.toSet());
    return new PropertyTables(
        published, Topic.read(inputFile, faults, row -> input(row, ids, known)));
  }

  /** What the models take for one material. */
  List<ModelInput> inputsOf(String materialId) {
    return inputs.stream().filter(i -> i.materialId().equals(materialId)).toList();
  }

  static @Nullable Published published(DataRow row, List<String> materials) {
    String material = row.oneOf("material", materials);
    Property property = property(row);
    Numbers numbers = row.numbers();
    Basis basis = row.basis();
    List<SourceKey> keys = row.sources(basis);
    boolean preferred = row.oneOf("preferred", List.of("yes", "no")).equals("yes");
    return property == null
        ? null
        : new Published(
            material,
            new PropertyValue(
                row.text("id"),
                property.id(),
                numbers.low(),
                numbers.typical(),
                numbers.high(),
                property.unit(),
                row.text("conditions"),
                keys,
                row.text("locator"),
                basis,
                preferred,
                row.text("note")));
  }

  static @Nullable ModelInput input(DataRow row, List<String> materials, Set<String> known) {
    String material = row.oneOf("material", materials);
    Property property = property(row);
    Numbers numbers = row.numbers();
    if (!numbers.complete()) {
      row.fault("low", "low, typical and high must all be given: the models take this row");
    }
    Basis basis = row.basis();
    List<SourceKey> keys = row.sources(basis);
    List<String> takenFrom = row.words("taken_from", known);
    if (basis == Basis.PROJECT_SETTING && row.text("note").isEmpty()) {
      row.fault("note", "a value chosen by the project must say why");
    }
    return property == null || !numbers.complete()
        ? null
        : new ModelInput(
            row.text("id"),
            material,
            property,
            Objects.requireNonNull(numbers.low()),
            Objects.requireNonNull(numbers.typical()),
            Objects.requireNonNull(numbers.high()),
            takenFrom,
            keys,
            basis,
            row.text("note"));
  }

  private static @Nullable Property property(DataRow row) {
    Property property = Identified.of(Property.class, row.text("quantity")).orElse(null);
    if (property == null) {
      row.expected("quantity", "a known property");
    } else if (!row.text("unit").equals(property.unit())) {
      row.expected("unit", property.unit());
    }
    return property;
  }
}
