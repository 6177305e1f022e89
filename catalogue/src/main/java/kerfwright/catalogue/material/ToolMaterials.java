package kerfwright.catalogue.material;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.table.Faults;
import kerfwright.quantity.Pressure;
import kerfwright.quantity.Range;
import org.jspecify.annotations.Nullable;

/** The materials instruments are made of. */
public final class ToolMaterials {
  private static final ToolMaterials PACKAGED = Topic.sound(ToolMaterials::read);

  private final Map<String, ToolMaterial> byId;

  private ToolMaterials(Map<String, ToolMaterial> byId) {
    this.byId = byId;
  }

  /** The tool materials packaged with the catalogue. */
  public static ToolMaterials packaged() {
    return PACKAGED;
  }

  private static ToolMaterials read(Faults faults) {
    PropertyTables tables =
        PropertyTables.read(
            "tool-material/list.csv",
            "tool-material/published.csv",
            "tool-material/values.csv",
            faults);
    return new ToolMaterials(
        Topic.byId(
            Topic.read("tool-material/list.csv", faults, row -> material(row, tables)),
            ToolMaterial::id));
  }

  private static @Nullable ToolMaterial material(DataRow row, PropertyTables tables) {
    List<ModelInput> own = tables.inputsOf(row.text("id"));
    Range<Pressure> hardness = pressure(own, Property.HARDNESS);
    Range<Pressure> young = pressure(own, Property.YOUNG_MODULUS);
    Range<Double> density = number(own, Property.DENSITY);
    Range<Double> toughness = number(own, Property.FRACTURE_TOUGHNESS);
    if (hardness == null || young == null || density == null || toughness == null) {
      row.fault("id", "needs hardness, young-modulus, density and fracture-toughness");
      return null;
    }
    return new ToolMaterial(
        row.text("id"),
        row.required("label"),
        hardness,
        young,
        density,
        toughness,
        pressure(own, Property.FLEXURAL_STRENGTH),
        own);
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
}
