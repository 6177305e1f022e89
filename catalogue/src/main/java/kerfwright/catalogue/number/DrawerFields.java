package kerfwright.catalogue.number;

import static java.util.Objects.requireNonNull;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The columns of a drawer list that say what an instrument is, as typed; any may be blank.
 *
 * @param cells by name of column; one that is missing is blank, other columns are left out
 */
public record DrawerFields(Map<String, String> cells) {
  /** Names of the columns. */
  public static final List<String> COLUMNS =
      List.of(
          "kind",
          "iso",
          "us",
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

  public DrawerFields {
    Map<String, String> known = new HashMap<>();
    for (String name : COLUMNS) {
      known.put(name, cells.getOrDefault(name, "").strip());
    }
    cells = Map.copyOf(known);
  }

  /** The field in a column. */
  public String at(String name) {
    return requireNonNull(cells.get(name), name);
  }

  /** The kind of instrument or piece. */
  public String kind() {
    return at("kind");
  }
}
