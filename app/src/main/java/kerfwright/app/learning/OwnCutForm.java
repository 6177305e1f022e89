package kerfwright.app.learning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.material.Materials;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.learning.OwnCut;
import org.jspecify.annotations.Nullable;

/**
 * Measured slots as they were typed, with what is wrong in them.
 *
 * @param values what was typed, by field
 * @param problems what is wrong, as keys of words, by field
 * @param cut the slots; null where there is a problem, or nothing was typed yet
 */
public record OwnCutForm(
    Map<String, String> values, Map<String, String> problems, @Nullable OwnCut cut) {
  /** The fields, in the order of the protocol. */
  public static final List<String> FIELDS =
      List.of(
          "instrument",
          "handpiece",
          "material",
          "load_g",
          "water_ml",
          "engaged_mm",
          "seconds",
          "depths_mm",
          "stall_g");

  private static final double NEWTONS_PER_GRAM = 9.80665e-3;

  public OwnCutForm {
    values = Map.copyOf(values);
    problems = Map.copyOf(problems);
  }

  /** The form before anyone typed. */
  static OwnCutForm fresh() {
    return new OwnCutForm(
        Map.of("handpiece", "turbine", "material", "mica-glass-ceramic", "seconds", "30"),
        Map.of(),
        null);
  }

  public String at(String field) {
    return values.getOrDefault(field, "");
  }

  public String problem(String field) {
    return problems.getOrDefault(field, "");
  }

  /** Reads what was typed against the drawer. */
  public static OwnCutForm read(Map<String, String> typed, Drawer drawer) {
    OwnCutForm form = new OwnCutForm(typed, Map.of(), null);
    Map<String, String> wrong = new LinkedHashMap<>();
    StockItem item = drawer.labelled(form.at("instrument").strip()).orElse(null);
    if (item == null || OwnCuts.instrument(item, 0, 0).isEmpty()) {
      wrong.put("instrument", item == null ? "pace.no-instrument" : "pace.no-working-part");
    }
    String handpiece = form.at("handpiece");
    if (Handpieces.byId(handpiece)
        .filter(h -> item == null || !item.isRotary() || h.shank() == item.properties().shank())
        .isEmpty()) {
      wrong.put("handpiece", "pace.no-handpiece");
    }
    String material = form.at("material");
    if (Materials.packaged().find(material).isEmpty()) {
      wrong.put("material", "pace.no-material");
    }
    double load = form.number("load_g", 5, 1000, wrong) * NEWTONS_PER_GRAM;
    double water = form.number("water_ml", 0, 300, wrong);
    double engaged = form.number("engaged_mm", 0.2, 20, wrong);
    double seconds = form.number("seconds", 1, 600, wrong);
    List<Double> depths = depths(form.at("depths_mm"));
    if (depths.isEmpty()) {
      wrong.put("depths_mm", "pace.wrong-depths");
    }
    Double stall =
        form.at("stall_g").isBlank()
            ? null
            : Double.valueOf(form.number("stall_g", 5, 3000, wrong) * NEWTONS_PER_GRAM);
    if (!wrong.isEmpty() || item == null) {
      return new OwnCutForm(typed, wrong, null);
    }
    OwnCut cut =
        new OwnCut(
            item.id(),
            item.uses(),
            item.sterilisations(),
            handpiece,
            material,
            load,
            water,
            engaged,
            seconds,
            depths,
            stall);
    return new OwnCutForm(typed, wrong, cut);
  }

  private double number(String field, double low, double high, Map<String, String> wrong) {
    Optional<Double> value = parsed(at(field)).filter(v -> OwnCut.within(v, low, high));
    if (value.isEmpty()) {
      wrong.put(field, "pace.wrong-" + field.replace('_', '-'));
    }
    return value.orElse(0.0);
  }

  private static Optional<Double> parsed(String text) {
    String point = text.strip().replace(',', '.');
    return point.matches("\\d{1,5}(\\.\\d{1,4})?")
        ? Optional.of(Double.valueOf(point))
        : Optional.empty();
  }

  /** One to twenty depths with spaces or semicolons between; empty where one is none. */
  private static List<Double> depths(String text) {
    List<Double> depths = new ArrayList<>();
    for (String one : text.strip().split("[\\s;]+")) {
      Optional<Double> depth = parsed(one).filter(d -> OwnCut.within(d, 0.01, 30));
      if (depth.isEmpty()) {
        return List.of();
      }
      depths.add(depth.get());
    }
    return depths.size() <= 20 ? depths : List.of();
  }
}
