package kerfwright.app.learning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.material.Materials;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.tool.Instrument;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.learning.OwnCut;
import org.jspecify.annotations.Nullable;

/**
 * Measured slots as they were typed, with what is wrong in them.
 *
 * @param values what was typed, by field
 * @param problems what is wrong, as keys of words, by field
 */
public record OwnCutForm(Map<String, String> values, Map<String, String> problems) {
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
        Map.of());
  }

  public String at(String field) {
    return values.getOrDefault(field, "");
  }

  public String problem(String field) {
    return problems.getOrDefault(field, "");
  }

  /**
   * What was read.
   *
   * @param form as typed, with every problem found
   * @param cut the slots; null where there is a problem
   */
  public record Read(OwnCutForm form, @Nullable OwnCut cut) {}

  /** Reads what was typed against the drawer. */
  public static Read read(Map<String, String> typed, Drawer drawer) {
    Map<String, String> wrong = new LinkedHashMap<>();
    StockItem item = drawer.labelled(typed.getOrDefault("instrument", "").strip()).orElse(null);
    if (item == null || !cuts(item)) {
      wrong.put("instrument", item == null ? "pace.no-instrument" : "pace.no-working-part");
    }
    String handpiece = typed.getOrDefault("handpiece", "");
    if (Handpieces.byId(handpiece)
        .filter(h -> item == null || !item.isRotary() || h.shank() == item.properties().shank())
        .isEmpty()) {
      wrong.put("handpiece", "pace.no-handpiece");
    }
    String material = typed.getOrDefault("material", "");
    if (Materials.packaged().find(material).isEmpty()) {
      wrong.put("material", "pace.no-material");
    }
    double load = number(typed, "load_g", 5, 1000, wrong) * NEWTONS_PER_GRAM;
    double water = number(typed, "water_ml", 0, 300, wrong);
    double engaged = number(typed, "engaged_mm", 0.2, 20, wrong);
    double seconds = number(typed, "seconds", 1, 600, wrong);
    List<Double> depths = depths(typed.getOrDefault("depths_mm", ""));
    if (depths.isEmpty()) {
      wrong.put("depths_mm", "pace.wrong-depths");
    }
    boolean listened = !typed.getOrDefault("stall_g", "").isBlank();
    double stall = listened ? number(typed, "stall_g", 5, 3000, wrong) * NEWTONS_PER_GRAM : 0;
    OwnCutForm form = new OwnCutForm(typed, wrong);
    if (!wrong.isEmpty() || item == null) {
      return new Read(form, null);
    }
    return new Read(
        form,
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
            listened ? stall : null));
  }

  private static boolean cuts(StockItem item) {
    return item.isRotary()
        && Instrument.of(
                new DrawerInstrument(
                    item.label(),
                    item.properties(),
                    item.uses(),
                    item.sterilisations(),
                    DrawerInstrument.State.CLEAN))
            != null;
  }

  private static double number(
      Map<String, String> typed, String field, double low, double high, Map<String, String> wrong) {
    Optional<Double> value =
        parsed(typed.getOrDefault(field, "")).filter(v -> OwnCut.within(v, low, high));
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
    for (String one : Arrays.asList(text.strip().split("[\\s;]+"))) {
      Optional<Double> depth = parsed(one).filter(d -> OwnCut.within(d, 0.01, 30));
      if (depth.isEmpty()) {
        return List.of();
      }
      depths.add(depth.get());
    }
    return depths.size() <= 20 ? depths : List.of();
  }
}
