package kerfwright.app.heatfile;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.input.Bounds;
import kerfwright.app.input.Faults;
import kerfwright.app.input.Fields;
import kerfwright.app.input.Node;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.physics.heat.HeatLayer;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/** The field {@code layers} of a heat problem: by numbers, or by a material of the catalogue. */
final class HeatLayers {
  private static final Bounds THICKNESS = Bounds.above(0, 1000, "mm");
  private static final Bounds CONDUCTIVITY = Bounds.above(0, 5000, "W/(m K)");
  private static final Bounds DENSITY = Bounds.above(0, 30_000, "kg/m3");
  private static final Bounds SPECIFIC_HEAT = Bounds.above(0, 20_000, "J/(kg K)");
  private static final int MOST_LAYERS = 20;

  private HeatLayers() {}

  static List<HeatLayer> read(Fields fields, Faults faults) {
    List<HeatLayer> layers = new ArrayList<>();
    Node node = fields.required("layers", Message.of("heat.layers"));
    List<Node> items = node == null ? null : fields.items("layers", node);
    if (items == null) {
      return layers;
    }
    if (items.isEmpty() || items.size() > MOST_LAYERS) {
      fields.fault("layers", Message.of("heat.layer-count", MOST_LAYERS));
    }
    for (int i = 0; i < items.size(); i++) {
      String path = "layers[" + i + "]";
      if (items.get(i) instanceof Node.Mapping mapping) {
        HeatLayer layer = layer(new Fields(mapping, path, faults));
        if (layer != null) {
          layers.add(layer);
        }
      } else {
        Node found = items.get(i);
        faults.add(found.line(), path, Message.of("heat.layer-fields"));
      }
    }
    return layers;
  }

  private static @Nullable HeatLayer layer(Fields layer) {
    Double thickness = layer.number("thickness_mm", THICKNESS, true);
    if (layer.optional("material") != null) {
      List<String> ids = Materials.packaged().ids();
      String id = layer.oneOf("material", "material", ids, true);
      layer.rejectUnknown();
      Material material = id == null ? null : Materials.packaged().get(id);
      return thickness == null || material == null
          ? null
          : HeatLayer.of(thickness, material.typical());
    }
    Double conductivity = layer.number("conductivity_w_per_mk", CONDUCTIVITY, true);
    Double density = layer.number("density_kg_per_m3", DENSITY, true);
    Double specificHeat = layer.number("specific_heat_j_per_kgk", SPECIFIC_HEAT, true);
    layer.rejectUnknown();
    return thickness == null || conductivity == null || density == null || specificHeat == null
        ? null
        : new HeatLayer(thickness, conductivity, density, specificHeat);
  }
}
