package kerfwright.app.stocklist;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import kerfwright.catalogue.number.DrawerFields;

/** Which column of a list says what: the field a column stands for, by its place; none or one. */
public final class ColumnMapping {
  /** What a column may stand for: those of the drawer file, and what the drawer keeps besides. */
  public static final List<String> FIELDS =
      Stream.of(
              List.of("id"),
              DrawerFields.COLUMNS,
              List.of("uses", "sterilisations", "state", "place", "price", "pieces", "single_use"))
          .flatMap(List::stream)
          .toList();

  private static final Map<String, String> OTHER_WORDS =
      Map.ofEntries(
          Map.entry("label", "id"),
          Map.entry("no", "id"),
          Map.entry("number", "iso"),
          Map.entry("iso_number", "iso"),
          Map.entry("iso_6360", "iso"),
          Map.entry("us_size", "us"),
          Map.entry("us_no", "us"),
          Map.entry("type", "kind"),
          Map.entry("diameter", "head_mm"),
          Map.entry("diameter_mm", "head_mm"),
          Map.entry("head_diameter_mm", "head_mm"),
          Map.entry("head_length", "head_length_mm"),
          Map.entry("working_length_mm", "head_length_mm"),
          Map.entry("length_mm", "overall_mm"),
          Map.entry("overall_length_mm", "overall_mm"),
          Map.entry("rpm", "max_rpm"),
          Map.entry("max_speed", "max_rpm"),
          Map.entry("maximum_speed_rpm", "max_rpm"),
          Map.entry("sterilizations", "sterilisations"),
          Map.entry("cycles", "sterilisations"),
          Map.entry("used", "uses"),
          Map.entry("location", "place"),
          Map.entry("cabinet", "place"),
          Map.entry("cost", "price"),
          Map.entry("quantity", "pieces"),
          Map.entry("count", "pieces"),
          Map.entry("single_use_only", "single_use"));

  private final List<String> fields;

  private ColumnMapping(List<String> fields) {
    this.fields = List.copyOf(fields);
  }

  /** As chosen: one entry a column, empty where it is left out. Unknown names are left out. */
  public static ColumnMapping of(List<String> chosen) {
    return new ColumnMapping(chosen.stream().map(one -> FIELDS.contains(one) ? one : "").toList());
  }

  /** A guess by the names of the columns; each field is given once. */
  public static ColumnMapping guess(List<String> header) {
    List<String> guessed = new ArrayList<>();
    for (String name : header) {
      String plain =
          name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "_").replaceAll("^_|_$", "");
      String field = FIELDS.contains(plain) ? plain : OTHER_WORDS.getOrDefault(plain, "");
      guessed.add(guessed.contains(field) ? "" : field);
    }
    return new ColumnMapping(guessed);
  }

  /** The field of each column. */
  public List<String> fields() {
    return fields;
  }

  public boolean maps(String field) {
    return fields.contains(field);
  }

  /** Fields chosen for more than one column. */
  public List<String> doubled() {
    return FIELDS.stream()
        .filter(field -> fields.stream().filter(field::equals).count() > 1)
        .toList();
  }

  /** The cells of a row by field. */
  public Map<String, String> cells(List<String> row) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < Math.min(fields.size(), row.size()); i++) {
      if (!fields.get(i).isEmpty()) {
        cells.put(fields.get(i), row.get(i));
      }
    }
    return cells;
  }
}
