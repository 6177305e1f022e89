package kerfwright.app.label;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import kerfwright.practice.setting.SettingValues;
import org.jspecify.annotations.Nullable;

/**
 * The sizes of a sheet as they are typed, and what is wrong with them.
 *
 * @param values as typed, by field
 * @param faults fields that cannot be used; the field "room" where labels would be too small
 * @param sheet the sheet meant; the usual one where there are faults
 */
public record SheetForm(Map<String, String> values, List<String> faults, LabelSheet sheet) {
  /** Fields with the least and the most they may be. */
  private static final Map<String, double[]> FIELDS = new LinkedHashMap<>();

  static {
    FIELDS.put("page-width", new double[] {50, 450});
    FIELDS.put("page-height", new double[] {20, 450});
    FIELDS.put("columns", new double[] {1, 20});
    FIELDS.put("rows", new double[] {1, 60});
    FIELDS.put("margin-x", new double[] {0, 100});
    FIELDS.put("margin-y", new double[] {0, 100});
    FIELDS.put("gap-x", new double[] {0, 50});
    FIELDS.put("gap-y", new double[] {0, 50});
  }

  static final String SETTING = "label.";

  public List<String> fields() {
    return List.copyOf(FIELDS.keySet());
  }

  /** Reads what was sent; what was not sent is as the practice keeps it, or usual. */
  static SheetForm of(Function<String, @Nullable String> sent, SettingValues set) {
    Map<String, String> usual = usual();
    Map<String, String> values = new LinkedHashMap<>();
    List<String> faults = new ArrayList<>();
    List<Double> numbers = new ArrayList<>();
    FIELDS.forEach(
        (name, bounds) -> {
          String typed = sent.apply(name);
          String value =
              typed == null
                  ? set.text(SETTING + name, usual.getOrDefault(name, ""))
                  : typed.strip();
          values.put(name, value);
          Double number = number(value, bounds, name.equals("columns") || name.equals("rows"));
          if (number == null) {
            faults.add(name);
          } else {
            numbers.add(number);
          }
        });
    LabelSheet sheet = faults.isEmpty() ? sheet(numbers) : LabelSheet.USUAL;
    if (!sheet.hasRoom()) {
      faults.add("room");
      return new SheetForm(values, faults, LabelSheet.USUAL);
    }
    return new SheetForm(values, faults, sheet);
  }

  /** In the order of the fields. */
  private static LabelSheet sheet(List<Double> n) {
    return new LabelSheet(
        n.get(0),
        n.get(1),
        n.get(2).intValue(),
        n.get(3).intValue(),
        n.get(4),
        n.get(5),
        n.get(6),
        n.get(7));
  }

  private static @Nullable Double number(String text, double[] bounds, boolean whole) {
    if (!text.matches(whole ? "\\d{1,2}" : "\\d{1,3}([.,]\\d{1,2})?")) {
      return null;
    }
    double number = Double.parseDouble(text.replace(',', '.'));
    return number < bounds[0] || number > bounds[1] ? null : number;
  }

  private static Map<String, String> usual() {
    LabelSheet sheet = LabelSheet.USUAL;
    return Map.of(
        "page-width", plain(sheet.widthMm()),
        "page-height", plain(sheet.heightMm()),
        "columns", Integer.toString(sheet.columns()),
        "rows", Integer.toString(sheet.rows()),
        "margin-x", plain(sheet.marginXMm()),
        "margin-y", plain(sheet.marginYMm()),
        "gap-x", plain(sheet.gapXMm()),
        "gap-y", plain(sheet.gapYMm()));
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }

  /** As settings: a value as usual is none. */
  Map<String, String> settings() {
    Map<String, String> usual = usual();
    Map<String, String> kept = new LinkedHashMap<>();
    values.forEach(
        (name, value) -> kept.put(SETTING + name, value.equals(usual.get(name)) ? "" : value));
    return kept;
  }

  public String at(String name) {
    return values.getOrDefault(name, "");
  }

  public static double least(String name) {
    return bounds(name)[0];
  }

  public static double most(String name) {
    return bounds(name)[1];
  }

  private static double[] bounds(String name) {
    double[] bounds = FIELDS.get(name);
    return bounds == null ? new double[2] : bounds;
  }
}
