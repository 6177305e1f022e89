package kerfwright.app.casefile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import kerfwright.app.input.Bounds;
import kerfwright.app.input.Faults;
import kerfwright.app.input.Fields;
import kerfwright.app.input.Node;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Trait;
import kerfwright.catalogue.stack.UsualLayer;
import kerfwright.catalogue.stack.UsualStack;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.Known;
import kerfwright.planner.casework.Layer;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;
import kerfwright.quantity.Range;
import org.jspecify.annotations.Nullable;

/** The fields {@code layers} and {@code keep}. */
final class LayerFields {
  private static final Bounds THICKNESS = Bounds.above(0, 30, "mm");
  private static final Bounds KEPT = Bounds.above(0, 20, "mm");
  private static final int MOST_LAYERS = 20;

  private final List<Material> materials;
  private final List<String> ids;

  LayerFields(CaseCatalogue catalogue) {
    this.materials = catalogue.materials();
    this.ids = materials.stream().map(Material::id).toList();
  }

  /** The stack; null where the field is missing or holds a fault. */
  @Nullable List<Layer> stack(Fields fields, Faults faults, Known known) {
    Node node = fields.optional("layers");
    List<Node> items = node == null ? null : fields.items("layers", node);
    if (items == null) {
      return null;
    }
    if (items.isEmpty() || items.size() > MOST_LAYERS) {
      fields.fault("layers", Message.of("fault.layer-count", items.size()));
      return null;
    }
    List<Layer> stack = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      String path = "layers[" + i + "]";
      if (items.get(i) instanceof Node.Mapping mapping) {
        boolean underDecay =
            i > 0 && !stack.isEmpty() && stack.get(stack.size() - 1).material().has(Trait.CARIOUS);
        Layer layer = layer(new Fields(mapping, path, faults), faults, known, underDecay);
        if (layer != null) {
          stack.add(layer);
        }
      } else {
        Node found = items.get(i);
        faults.add(found.line(), path, Message.of("fault.layer-fields", found.found()));
      }
    }
    return stack.size() == items.size() ? stack : null;
  }

  /** Whether the usual layers can stand in; a fault where there are none or a thickness lacks. */
  static boolean complete(Fields fields, @Nullable UsualStack usual) {
    if (usual == null) {
      fields.fault("layers", Message.of("fault.missing-usual-stack"));
      return false;
    }
    if (!usual.complete()) {
      List<Message> lacking = usual.missing().stream().map(LayerFields::lacking).toList();
      fields.fault("layers", Message.of("fault.missing-usual-thickness", usual.name(), lacking));
      return false;
    }
    return true;
  }

  private static Message lacking(UsualLayer layer) {
    return Message.of(
        "fault.lacking",
        Message.of("label.material-" + layer.materialId()),
        Message.of("stack." + layer.note()));
  }

  private @Nullable Layer layer(Fields fields, Faults faults, Known ofCase, boolean underDecay) {
    Material material = material(fields);
    Node node = fields.required("thickness_mm", Message.of("fault.thickness"));
    // a bitewing shows only the dentine under decay too thick; the rest it shows as a film does
    boolean tooThick = underDecay && material != null && material.has(Trait.DENTINE);
    Known otherwise = ofCase == Known.BITEWING && !tooThick ? Known.FILM : ofCase;
    Known known = KnownField.read(fields, otherwise);
    fields.rejectUnknown();
    if (node == null) {
      return null;
    }
    String path = fields.path("thickness_mm");
    Range<Length> thickness;
    if (node instanceof Node.Mapping) {
      thickness = range(path, node, THICKNESS, faults);
      known = Known.RANGE;
    } else {
      Double mm = Fields.number(path, node, THICKNESS, faults);
      thickness = mm == null ? null : known.around(Length.ofMillimetres(mm), null);
    }
    return material == null || thickness == null ? null : new Layer(material, thickness, known);
  }

  private @Nullable Material material(Fields fields) {
    String id = fields.oneOf("material", "material", ids, true);
    return materials.stream().filter(one -> one.id().equals(id)).findFirst().orElse(null);
  }

  /** Low, typical and high; null after a fault. */
  static @Nullable Range<Length> range(String path, Node node, Bounds bounds, Faults faults) {
    if (!(node instanceof Node.Mapping mapping)) {
      return null;
    }
    Fields range = new Fields(mapping, path, faults);
    Double low = range.number("low", bounds, true);
    Double typical = range.number("typical", bounds, true);
    Double high = range.number("high", bounds, true);
    range.rejectUnknown();
    if (low == null || typical == null || high == null) {
      return null;
    }
    if (low > typical || typical > high) {
      faults.add(
          node.line(),
          path,
          Message.of(
              "fault.rise",
              BigDecimal.valueOf(low),
              BigDecimal.valueOf(typical),
              BigDecimal.valueOf(high)));
      return null;
    }
    return new Range<>(
        Length.ofMillimetres(low), Length.ofMillimetres(typical), Length.ofMillimetres(high));
  }

  /** What must remain; null where nothing is asked or the field holds a fault. */
  @Nullable Keep keep(Fields fields) {
    Fields keep = fields.fields("keep", Message.of("fault.keep"), false);
    if (keep == null) {
      return null;
    }
    Material material = material(keep);
    Node node = keep.required("at_least_mm", Message.of("fault.at-least"));
    boolean all = node instanceof Node.Scalar scalar && scalar.text().strip().equals("all");
    Double least = null;
    if (node != null && !all) {
      least = keep.number("at_least_mm", KEPT, true);
    }
    keep.rejectUnknown();
    if (material == null || !all && least == null) {
      return null;
    }
    return new Keep(material.id(), least == null ? null : Length.ofMillimetres(least));
  }
}
