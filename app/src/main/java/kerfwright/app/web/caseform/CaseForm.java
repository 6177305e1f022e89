package kerfwright.app.web.caseform;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kerfwright.app.chairside.QueryFields;
import kerfwright.app.input.Fault;
import kerfwright.app.input.Node;
import kerfwright.planner.plan.Branch;

/**
 * The new-case form exactly as it was filled in. It turns into the same tree a case file gives, so
 * one reader checks both; what was typed is never lost.
 */
public final class CaseForm {
  /** One row of the layers as typed. */
  public record LayerRow(
      int index, String material, String low, String typical, String high, String known) {
    boolean blank() {
      return (material + low + typical + high).isBlank();
    }
  }

  private final Map<String, List<String>> values;

  private CaseForm(Map<String, List<String>> values) {
    this.values = new LinkedHashMap<>(values);
  }

  public static CaseForm of(Map<String, List<String>> values) {
    return new CaseForm(values);
  }

  /** The form an address carries. */
  public static CaseForm ofQuery(String query) {
    return of(QueryFields.of(query));
  }

  /** The field as typed, empty where it was not. */
  public String value(String name) {
    List<String> all = values.getOrDefault(name, List.of());
    return all.isEmpty() ? "" : all.get(0);
  }

  public List<String> all(String name) {
    return List.copyOf(values.getOrDefault(name, List.of()));
  }

  /** Whether a box or option is ticked. */
  public boolean chosen(String name, String option) {
    return values.getOrDefault(name, List.of()).contains(option);
  }

  /** The tooth as typed, or else as picked. */
  public String tooth() {
    String typed = value("tooth").strip();
    return typed.isEmpty() ? value("tooth_pick") : typed;
  }

  /** The layers as typed, blank rows left out. */
  public List<LayerRow> rows() {
    return everyRow().stream().filter(row -> !row.blank()).toList();
  }

  /** The layers as sent, with blank rows. */
  List<LayerRow> everyRow() {
    List<String> materials = all("layer_material");
    List<LayerRow> rows = new ArrayList<>();
    for (int i = 0; i < materials.size(); i++) {
      rows.add(
          new LayerRow(
              i,
              materials.get(i),
              at("layer_low", i),
              at("layer_typical", i),
              at("layer_high", i),
              value("layer_known_" + i)));
    }
    return rows;
  }

  private String at(String name, int index) {
    List<String> all = values.getOrDefault(name, List.of());
    return index < all.size() ? all.get(index) : "";
  }

  /** The same form with other layers. */
  public CaseForm withRows(List<LayerRow> rows) {
    Map<String, List<String>> changed = new LinkedHashMap<>(values);
    changed.keySet().removeIf(name -> name.startsWith("layer_known_"));
    changed.put("layer_material", rows.stream().map(LayerRow::material).toList());
    changed.put("layer_low", rows.stream().map(LayerRow::low).toList());
    changed.put("layer_typical", rows.stream().map(LayerRow::typical).toList());
    changed.put("layer_high", rows.stream().map(LayerRow::high).toList());
    for (int i = 0; i < rows.size(); i++) {
      if (!rows.get(i).known().isBlank()) {
        changed.put("layer_known_" + i, List.of(rows.get(i).known()));
      }
    }
    return new CaseForm(changed);
  }

  /** The same form with another value of a field; blank clears it. */
  public CaseForm with(String name, String value) {
    Map<String, List<String>> changed = new LinkedHashMap<>(values);
    changed.put(name, List.of(value));
    return new CaseForm(changed);
  }

  /** Where a fault is shown: the name of the place beside its field. */
  String place(Fault fault) {
    String field = fault.field();
    if (field.startsWith("layers[")) {
      int index = Integer.parseInt(field.substring(7, field.indexOf(']')));
      List<LayerRow> rows = rows();
      return "layer-" + (index < rows.size() ? rows.get(index).index() : index);
    }
    for (String name : FormNode.PLACES) {
      if (field.equals(name) || field.startsWith(name + ".") || field.startsWith(name + "[")) {
        return name;
      }
    }
    return "form";
  }

  /** The tree a case file of this content would give. */
  public Node.Mapping toNode() {
    return FormNode.of(this);
  }

  /** The form as the query of an address, so that a plan can be linked to and reloaded. */
  public String query() {
    return values.entrySet().stream()
        .filter(entry -> !entry.getKey().equals("do") && !entry.getKey().equals("asked"))
        .flatMap(
            entry ->
                entry.getValue().stream()
                    .map(value -> encode(entry.getKey()) + "=" + encode(value)))
        .collect(Collectors.joining("&"));
  }

  /** The address of the plan that a branch is. */
  public String of(Branch branch) {
    return with("restoration", branch.restoration())
        .with("procedure", branch.plan().cutCase().procedure().id())
        .query();
  }

  private static String encode(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
