package kerfwright.app.web.caseform;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.input.Node;

/** Builds the tree of a case from its form; blank fields are left out, as in a file. */
final class FormNode {
  static final List<String> PLACES =
      List.of(
          "case",
          "procedure",
          "tooth",
          "pulp",
          "restoration",
          "intended",
          "lesion",
          "layers",
          "chamber",
          "keep",
          "outline",
          "goal",
          "handpieces",
          "coolant_ml_per_min");

  private FormNode() {}

  static Node.Mapping of(CaseForm form) {
    Map<String, Node.Entry> top = new LinkedHashMap<>();
    for (String name : List.of("case", "procedure", "pulp")) {
      put(top, name, form.value(name));
    }
    if (typed(form, FieldGroup.RESTORATION)) {
      put(top, "restoration", form.value("restoration"));
    }
    if (typed(form, FieldGroup.INTENDED)) {
      put(top, "intended", form.value("intended"));
    }
    if (typed(form, FieldGroup.LESION)) {
      Map<String, Node.Entry> lesion = new LinkedHashMap<>();
      put(lesion, "depth", form.value("lesion_depth"));
      put(lesion, "activity", form.value("lesion_activity"));
      put(lesion, "texture", form.value("lesion_texture"));
      top.put("lesion", entry(new Node.Mapping(lesion, 0)));
    }
    if (!form.value("chamber_depth_mm").isBlank()) {
      Map<String, Node.Entry> chamber = new LinkedHashMap<>();
      put(chamber, "depth_mm", number(form.value("chamber_depth_mm")));
      put(chamber, "known", form.value("chamber_known"));
      top.put("chamber", entry(new Node.Mapping(chamber, 0)));
    }
    put(top, "coolant_ml_per_min", number(form.value("coolant_ml_per_min")));
    if (!form.tooth().isBlank()) {
      top.put("tooth", entry(TypedTooth.node(form)));
    }
    List<Node> layers = new ArrayList<>();
    form.rows().forEach(row -> layers.add(layer(row)));
    if (!layers.isEmpty() && typed(form, FieldGroup.LAYERS)) {
      top.put("layers", entry(new Node.Listing(layers, 0)));
    }
    keep(form, top);
    outline(form, top);
    String finish = form.value("finish_ra_um");
    if (!finish.isBlank()) {
      Map<String, Node.Entry> goal = new LinkedHashMap<>();
      put(goal, "finish_ra_um", number(finish));
      top.put("goal", entry(new Node.Mapping(goal, 0)));
    }
    List<Node> handpieces = new ArrayList<>();
    form.all("handpieces").forEach(id -> handpieces.add(text(id)));
    if (!handpieces.isEmpty()) {
      top.put("handpieces", entry(new Node.Listing(handpieces, 0)));
    }
    return new Node.Mapping(top, 0);
  }

  private static void keep(CaseForm form, Map<String, Node.Entry> top) {
    if (form.value("keep_material").isBlank()) {
      return;
    }
    Map<String, Node.Entry> keep = new LinkedHashMap<>();
    put(keep, "material", form.value("keep_material"));
    put(keep, "at_least_mm", allOrNumber(form.value("keep_at_least_mm")));
    top.put("keep", entry(new Node.Mapping(keep, 0)));
  }

  /** Whether a group holds something that was typed: what was filled in is left to the reader. */
  private static boolean typed(CaseForm form, FieldGroup group) {
    return !group.untouched(form);
  }

  private static void outline(CaseForm form, Map<String, Node.Entry> top) {
    boolean sized = !(form.value("outline_length_mm") + form.value("outline_width_mm")).isBlank();
    if (!sized || !typed(form, FieldGroup.OUTLINE)) {
      return;
    }
    Map<String, Node.Entry> outline = new LinkedHashMap<>();
    put(outline, "shape", form.value("outline_shape"));
    String length = number(form.value("outline_length_mm"));
    String width = number(form.value("outline_width_mm"));
    boolean circle = form.value("outline_shape").equals("circle");
    if (circle && (width.isEmpty() || width.equals(length))) {
      put(outline, "diameter_mm", length);
    } else {
      put(outline, "length_mm", length);
      put(outline, "width_mm", width);
    }
    top.put("outline", entry(new Node.Mapping(outline, 0)));
  }

  private static Node layer(CaseForm.LayerRow row) {
    Map<String, Node.Entry> layer = new LinkedHashMap<>();
    put(layer, "material", row.material());
    if (row.low().isBlank() && row.high().isBlank()) {
      put(layer, "thickness_mm", number(row.typical()));
      put(layer, "known", row.known());
    } else {
      Map<String, Node.Entry> range = new LinkedHashMap<>();
      put(range, "low", number(row.low()));
      put(range, "typical", number(row.typical()));
      put(range, "high", number(row.high()));
      layer.put("thickness_mm", entry(new Node.Mapping(range, 0)));
    }
    return new Node.Mapping(layer, 0);
  }

  /** The form asks for the word in either language; the file knows one. */
  private static String allOrNumber(String typed) {
    String text = typed.strip();
    return text.equalsIgnoreCase("alles") || text.equalsIgnoreCase("all") ? "all" : number(text);
  }

  /** Many keyboards give a comma for the decimal point. */
  private static String number(String typed) {
    String text = typed.strip();
    return text.matches("[0-9]+,[0-9]+") ? text.replace(',', '.') : text;
  }

  private static void put(Map<String, Node.Entry> fields, String name, String typed) {
    if (!typed.isBlank()) {
      fields.put(name, entry(text(typed.strip())));
    }
  }

  private static Node text(String value) {
    return new Node.Scalar(value, Node.Scalar.Kind.TEXT, 0);
  }

  private static Node.Entry entry(Node node) {
    return new Node.Entry(node, 0);
  }
}
