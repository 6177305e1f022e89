package kerfwright.app.label;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
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
  private static final String SETTING = "label.";

  /** Fields in the order in which they stand. */
  public static final List<Field> FIELDS =
      List.of(
          new Field("page-width", 50, 450, LabelSheet::widthMm),
          new Field("page-height", 20, 450, LabelSheet::heightMm),
          new Field("columns", 1, 20, LabelSheet::columns),
          new Field("rows", 1, 60, LabelSheet::rows),
          new Field("margin-x", 0, 100, LabelSheet::marginXMm),
          new Field("margin-y", 0, 100, LabelSheet::marginYMm),
          new Field("gap-x", 0, 50, LabelSheet::gapXMm),
          new Field("gap-y", 0, 50, LabelSheet::gapYMm));

  /** A field with the least and the most it may be, and what it says of a sheet. */
  public record Field(String name, double least, double most, ToDoubleFunction<LabelSheet> of) {
    private String usual() {
      double usual = of.applyAsDouble(LabelSheet.USUAL);
      return usual == Math.rint(usual) ? Long.toString((long) usual) : Double.toString(usual);
    }

    private @Nullable Double number(String text) {
      boolean whole = name.equals("columns") || name.equals("rows");
      if (!text.matches(whole ? "\\d{1,2}" : "\\d{1,3}([.,]\\d{1,2})?")) {
        return null;
      }
      double number = Double.parseDouble(text.replace(',', '.'));
      return number < least || number > most ? null : number;
    }
  }

  /** Reads what was sent; what was not sent is as the practice keeps it, or usual. */
  static SheetForm of(Function<String, @Nullable String> sent, SettingValues set) {
    Map<String, String> values = new LinkedHashMap<>();
    List<String> faults = new ArrayList<>();
    List<Double> numbers = new ArrayList<>();
    for (Field field : FIELDS) {
      String typed = sent.apply(field.name());
      String value =
          typed == null ? set.text(SETTING + field.name(), field.usual()) : typed.strip();
      values.put(field.name(), value);
      Double number = field.number(value);
      if (number == null) {
        faults.add(field.name());
      } else {
        numbers.add(number);
      }
    }
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

  /** As settings: a value as usual is none. */
  Map<String, String> settings() {
    Map<String, String> kept = new LinkedHashMap<>();
    for (Field field : FIELDS) {
      String value = at(field.name());
      kept.put(SETTING + field.name(), value.equals(field.usual()) ? "" : value);
    }
    return kept;
  }

  public String at(String name) {
    return values.getOrDefault(name, "");
  }
}
