package kerfwright.catalogue.material;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.table.Faults;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/** The materials of the catalogue, each with every value known and what the models take. */
public final class Materials {
  private static final Materials PACKAGED = Topic.sound(Materials::read);

  private final Map<String, MaterialReport> byId;

  private Materials(Map<String, MaterialReport> byId) {
    this.byId = byId;
  }

  /** The materials packaged with the catalogue. */
  public static Materials packaged() {
    return PACKAGED;
  }

  private static Materials read(Faults faults) {
    PropertyTables tables =
        PropertyTables.read(
            "material/list.csv", "material/values.csv", "model-input/values.csv", faults);
    List<String> known = Topic.read("material/traits.csv", faults, row -> row.text("id"));
    return new Materials(
        Topic.byId(
            Topic.read("material/list.csv", faults, row -> material(row, tables, known)),
            report -> report.material().id()));
  }

  private static @Nullable MaterialReport material(
      DataRow row, PropertyTables tables, List<String> known) {
    String id = row.text("id");
    List<ModelInput> own = tables.inputsOf(id);
    Material.Group group = row.requiredOneOf("group", Material.Group.class);
    String label = row.required("label");
    boolean inCases = row.oneOf("case_material", List.of("yes", "no")).equals("yes");
    Set<String> traits = Set.copyOf(row.words("traits", known));
    Material.Spread spread = SpreadOfInputs.of(own, row).orElse(null);
    return spread == null
        ? null
        : new MaterialReport(
            new Material(id, label, group, bestFirst(tables.published(), id), spread, traits),
            inCases,
            row.text("note"),
            own);
  }

  private static List<PropertyValue> bestFirst(List<PropertyTables.Published> all, String id) {
    Map<Property, List<PropertyValue>> byProperty = new EnumMap<>(Property.class);
    for (PropertyTables.Published row : all) {
      if (row.materialId().equals(id)) {
        byProperty
            .computeIfAbsent(
                Identified.of(Property.class, row.value().property()).orElseThrow(),
                p -> new ArrayList<>())
            .add(row.value());
      }
    }
    byProperty
        .values()
        .forEach(values -> values.sort(Comparator.comparing(v -> v.preferred() ? 0 : 1)));
    return byProperty.values().stream().flatMap(List::stream).toList();
  }

  /** Ids a layer of a case may name, in the order of the list. */
  public List<String> ids() {
    Set<String> ids = new LinkedHashSet<>();
    byId.forEach(
        (id, report) -> {
          if (report.caseMaterial()) {
            ids.add(id);
          }
        });
    return List.copyOf(ids);
  }

  /** Whether a layer of a case may be made of it; test substrates may not. */
  public boolean isCaseMaterial(String id) {
    return report(id).map(MaterialReport::caseMaterial).orElse(false);
  }

  /** Any material of the catalogue, test substrates too. */
  public Optional<Material> find(String id) {
    return report(id).map(MaterialReport::material);
  }

  /** A material known to exist; an unknown id is a fault of the program. */
  public Material get(String id) {
    return find(id)
        .orElseThrow(() -> new IllegalArgumentException("There is no material '" + id + "'"));
  }

  /** Every value of a material with range, source and basis. */
  public Optional<MaterialReport> report(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** All materials, test substrates too. */
  public List<Material> all() {
    return byId.values().stream().map(MaterialReport::material).toList();
  }
}
