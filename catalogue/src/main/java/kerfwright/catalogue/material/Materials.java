package kerfwright.catalogue.material;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;
import kerfwright.quantity.Identified;

/** The materials of the catalogue, each with every value known and what the models take. */
public final class Materials {
  private static final List<String> LIST_HEADER =
      List.of("id", "label", "group", "traits", "case_material", "note");
  private static final List<String> GROUPS =
      List.of("tooth", "bone", "metal", "ceramic", "polymer", "cement");

  private final Map<String, MaterialReport> byId;

  private Materials(Map<String, MaterialReport> byId) {
    this.byId = byId;
  }

  /** The materials packaged with the catalogue. */
  public static Materials packaged() {
    return Packaged.MATERIALS;
  }

  public static Materials load(Sources sources, Faults faults) {
    List<Row> list = Table.read("material/list.csv", LIST_HEADER, faults);
    PropertyTables tables =
        PropertyTables.read(list, "material/values.csv", "model-input/values.csv", sources, faults);
    Set<String> known = new LinkedHashSet<>();
    Table.read("material/traits.csv", List.of("id", "meaning"), faults)
        .forEach(row -> row.uniqueId("id", known));
    Map<String, MaterialReport> byId = new LinkedHashMap<>();
    Set<String> seen = new HashSet<>();
    for (Row row : list) {
      String id = row.uniqueId("id", seen);
      String label = row.required("label");
      String group = row.oneOf("group", GROUPS);
      boolean inCases = row.oneOf("case_material", List.of("yes", "no")).equals("yes");
      Set<String> traits = Set.copyOf(row.list("traits"));
      for (String trait : traits) {
        if (!known.contains(trait)) {
          row.fault("traits", "'" + trait + "' must be one of " + String.join(", ", known));
        }
      }
      List<ModelInput> own = tables.inputsOf(id);
      Optional<Material.Spread> spread = SpreadOfInputs.of(own, row);
      if (row.sound() && spread.isPresent()) {
        Material material =
            new Material(
                id,
                label,
                Material.Group.valueOf(group.toUpperCase(Locale.ROOT)),
                bestFirst(tables.published(), id),
                spread.get(),
                traits);
        byId.put(id, new MaterialReport(material, inCases, row.text("note"), own));
      }
    }
    return new Materials(byId);
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

  private static final class Packaged {
    static final Materials MATERIALS = read();

    private static Materials read() {
      Faults faults = new Faults();
      Materials materials = load(Sources.packaged(), faults);
      faults.throwIfAny();
      return materials;
    }
  }
}
