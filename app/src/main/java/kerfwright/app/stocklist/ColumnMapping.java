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

  /** What other lists call a field. */
  private static final Map<String, List<String>> OTHER_WORDS =
      Map.ofEntries(
          Map.entry("id", List.of("label", "no")),
          Map.entry("iso", List.of("number", "iso_number", "iso_6360")),
          Map.entry("us", List.of("us_size", "us_no")),
          Map.entry("kind", List.of("type")),
          Map.entry("head_mm", List.of("diameter", "diameter_mm", "head_diameter_mm")),
          Map.entry("head_length_mm", List.of("head_length", "working_length_mm")),
          Map.entry("overall_mm", List.of("length_mm", "overall_length_mm")),
          Map.entry("max_rpm", List.of("rpm", "max_speed", "maximum_speed_rpm")),
          Map.entry("sterilisations", List.of("sterilizations", "cycles")),
          Map.entry("uses", List.of("used")),
          Map.entry("place", List.of("location", "cabinet")),
          Map.entry("price", List.of("cost")),
          Map.entry("pieces", List.of("quantity", "count")),
          Map.entry("single_use", List.of("single_use_only")));

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
      String field =
          FIELDS.stream()
              .filter(
                  one ->
                      one.equals(plain) || OTHER_WORDS.getOrDefault(one, List.of()).contains(plain))
              .findFirst()
              .orElse("");
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
