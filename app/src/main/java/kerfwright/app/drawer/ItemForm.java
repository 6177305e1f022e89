package kerfwright.app.drawer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import kerfwright.app.stocklist.ListedRow;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import org.jspecify.annotations.Nullable;

/**
 * The form of one instrument: what was typed, and what is wrong with it.
 *
 * @param values what was typed, by field
 * @param problems what is wrong, each beginning with the field it is about where it is about one
 */
public record ItemForm(Map<String, String> values, List<String> problems) {
  /** Fields that say what the instrument is, with their words and a hint. */
  private static final Map<String, String[]> WHAT = new LinkedHashMap<>();

  static {
    WHAT.put("iso", new String[] {"ISO 6360 number", "15, 18 or 9 digits"});
    WHAT.put("us", new String[] {"US size", "for burs, as 330"});
    WHAT.put("kind", new String[] {"Kind", "diamond, carbide, steel, ..."});
    WHAT.put("shape", new String[] {"Shape", "code or name"});
    WHAT.put("grit", new String[] {"Grit", "coarse, medium, fine, ..."});
    WHAT.put("blades", new String[] {"Blades", "number of blades"});
    WHAT.put("head_mm", new String[] {"Head diameter, mm", "as 1.4"});
    WHAT.put("head_length_mm", new String[] {"Head length, mm", "as 8.0"});
    WHAT.put("shank", new String[] {"Shank", "FG, RA or HP"});
    WHAT.put("overall_mm", new String[] {"Overall length, mm", "as 19"});
    WHAT.put("max_rpm", new String[] {"Greatest speed, per min", "from the maker's label"});
  }

  static final List<String> KEPT = List.of("id", "pieces", "place", "price", "single_use", "state");

  static ItemForm of(Function<String, @Nullable String> field) {
    Map<String, String> values = new LinkedHashMap<>();
    List<String> names = new ArrayList<>(WHAT.keySet());
    names.addAll(KEPT);
    for (String name : names) {
      String value = field.apply(name);
      values.put(name, value == null ? "" : value.strip());
    }
    return new ItemForm(values, List.of());
  }

  static ItemForm of(StockItem item) {
    Map<String, String> values = new LinkedHashMap<>();
    WHAT.keySet().forEach(name -> values.put(name, value(item.fields(), name)));
    values.put("id", item.label());
    values.put("pieces", Integer.toString(item.pieces()));
    values.put("place", item.place());
    values.put("price", item.price() == null ? "" : item.price().toPlainString());
    values.put("single_use", item.singleUse() ? "yes" : "");
    values.put("state", item.state().id());
    return new ItemForm(values, List.of());
  }

  /** A form for one more of the same. */
  static ItemForm like(StockItem item) {
    Map<String, String> values = new LinkedHashMap<>(of(item).values);
    values.put("id", "");
    values.put("pieces", "1");
    values.put("state", InstrumentState.QUARANTINE.id());
    return new ItemForm(values, List.of());
  }

  ItemForm with(ListedRow row) {
    return new ItemForm(values, row.problems());
  }

  public String at(String name) {
    return values.getOrDefault(name, "");
  }

  /** What is wrong with one field, empty where nothing is. */
  public String problem(String name) {
    return problems.stream()
        .filter(one -> one.startsWith(name + " "))
        .reduce((a, b) -> a + "; " + b)
        .map(one -> one.substring(name.length() + 1))
        .orElse("");
  }

  public List<String> what() {
    return List.copyOf(WHAT.keySet());
  }

  static List<String> names() {
    return List.copyOf(WHAT.keySet());
  }

  public static String label(String name) {
    String[] words = WHAT.get(name);
    return words == null ? name : words[0];
  }

  public static String hint(String name) {
    String[] words = WHAT.get(name);
    return words == null ? "" : words[1];
  }

  static String value(DrawerFields f, String name) {
    return switch (name) {
      case "iso" -> f.iso();
      case "us" -> f.us();
      case "kind" -> f.kind();
      case "shape" -> f.shape();
      case "grit" -> f.grit();
      case "blades" -> f.blades();
      case "head_mm" -> f.headMm();
      case "head_length_mm" -> f.headLengthMm();
      case "shank" -> f.shank();
      case "overall_mm" -> f.overallMm();
      case "max_rpm" -> f.maxRpm();
      default -> throw new IllegalArgumentException(name);
    };
  }
}
