package kerfwright.catalogue.material;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;
import kerfwright.quantity.Pressure;
import kerfwright.quantity.Range;
import org.jspecify.annotations.Nullable;

/** The materials instruments are made of. */
public final class ToolMaterials {
  private static final List<String> LIST_HEADER = List.of("id", "label");

  private final Map<String, ToolMaterial> byId;

  private ToolMaterials(Map<String, ToolMaterial> byId) {
    this.byId = byId;
  }

  /** The tool materials packaged with the catalogue. */
  public static ToolMaterials packaged() {
    return Packaged.MATERIALS;
  }

  public static ToolMaterials load(Sources sources, Faults faults) {
    List<Row> list = Table.read("tool-material/list.csv", LIST_HEADER, faults);
    PropertyTables tables =
        PropertyTables.read(
            list, "tool-material/published.csv", "tool-material/values.csv", sources, faults);
    Map<String, ToolMaterial> byId = new LinkedHashMap<>();
    Set<String> seen = new HashSet<>();
    for (Row row : list) {
      String id = row.uniqueId("id", seen);
      String label = row.required("label");
      List<ModelInput> own = tables.inputsOf(id);
      Range<Pressure> hardness = pressure(own, Property.HARDNESS);
      Range<Pressure> young = pressure(own, Property.YOUNG_MODULUS);
      Range<Double> density = number(own, Property.DENSITY);
      Range<Double> toughness = number(own, Property.FRACTURE_TOUGHNESS);
      if (hardness == null || young == null || density == null || toughness == null) {
        row.fault("id", "needs hardness, young-modulus, density and fracture-toughness");
      } else if (row.sound()) {
        byId.put(
            id,
            new ToolMaterial(
                id,
                label,
                hardness,
                young,
                density,
                toughness,
                pressure(own, Property.FLEXURAL_STRENGTH),
                own));
      }
    }
    return new ToolMaterials(byId);
  }

  private static @Nullable Range<Double> number(List<ModelInput> inputs, Property property) {
    return inputs.stream()
        .filter(i -> i.property() == property)
        .findFirst()
        .map(i -> new Range<>(i.lowSi(), i.typicalSi(), i.highSi()))
        .orElse(null);
  }

  private static @Nullable Range<Pressure> pressure(List<ModelInput> inputs, Property property) {
    Range<Double> pascals = number(inputs, property);
    return pascals == null ? null : pascals.map(Pressure::new);
  }

  public List<String> ids() {
    return List.copyOf(byId.keySet());
  }

  public Optional<ToolMaterial> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  public ToolMaterial diamond() {
    return get("diamond");
  }

  public ToolMaterial cementedCarbide() {
    return get("cemented-carbide");
  }

  public ToolMaterial toolSteel() {
    return get("tool-steel");
  }

  public ToolMaterial shankSteel() {
    return get("shank-steel");
  }

  public ToolMaterial ceramic() {
    return get("ceramic");
  }

  public ToolMaterial polymer() {
    return get("polymer");
  }

  /** A tool material known to exist; an unknown id is a fault of the program. */
  public ToolMaterial get(String id) {
    return find(id)
        .orElseThrow(() -> new IllegalArgumentException("There is no tool material '" + id + "'"));
  }

  private static final class Packaged {
    static final ToolMaterials MATERIALS = read();

    private static ToolMaterials read() {
      Faults faults = new Faults();
      ToolMaterials materials = load(Sources.packaged(), faults);
      faults.throwIfAny();
      return materials;
    }
  }
}
