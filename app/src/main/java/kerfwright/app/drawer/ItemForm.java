package kerfwright.app.drawer;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import kerfwright.app.stocklist.RowProblem;
import kerfwright.app.words.Say;
import kerfwright.catalogue.piece.PieceKinds;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import org.jspecify.annotations.Nullable;

/**
 * The form of one instrument: what was typed, and what is wrong with it.
 *
 * @param values what was typed, by field
 * @param problems what is wrong
 */
public record ItemForm(Map<String, String> values, List<RowProblem> problems) {
  /** Fields that say what the instrument is, the number first: it tells most. */
  public static final List<String> WHAT =
      List.of(
          "iso",
          "us",
          "kind",
          "shape",
          "grit",
          "blades",
          "head_mm",
          "head_length_mm",
          "shank",
          "overall_mm",
          "max_rpm",
          "safe_end",
          "abrasive");

  private static final List<String> KEPT =
      List.of("id", "pieces", "place", "price", "single_use", "state");

  static ItemForm of(Function<String, @Nullable String> field) {
    Map<String, String> values = new LinkedHashMap<>();
    for (List<String> names : List.of(WHAT, KEPT)) {
      for (String name : names) {
        String value = field.apply(name);
        values.put(name, value == null ? "" : value.strip());
      }
    }
    if (PieceKinds.byId(values.getOrDefault("kind", "")).isPresent()) {
      // such a piece has none of them: what was typed before the kind was chosen is let go
      WHAT.stream().filter(ItemForm::rotaryOnly).forEach(name -> values.put(name, ""));
    }
    return new ItemForm(values, List.of());
  }

  /** True of a field that only a rotary instrument has. */
  public static boolean rotaryOnly(String name) {
    return WHAT.contains(name) && !name.equals("kind");
  }

  static ItemForm of(StockItem item) {
    Map<String, String> values = new LinkedHashMap<>();
    WHAT.forEach(name -> values.put(name, item.fields().at(name)));
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

  ItemForm with(List<RowProblem> found) {
    return new ItemForm(values, found);
  }

  public String at(String name) {
    return values.getOrDefault(name, "");
  }

  /** What is wrong with one field, empty where nothing is. */
  public String problem(Say say, String name) {
    return problems.stream()
        .filter(one -> one.field().equals(name))
        .map(one -> say.of(one.what()))
        .collect(Collectors.joining("; "));
  }

  /** What people call a field. */
  public static String label(Say say, String name) {
    return say.at("drawer.field-" + name.replace('_', '-'));
  }

  public static String hint(Say say, String name) {
    return say.at("drawer.hint-" + name.replace('_', '-'));
  }
}
