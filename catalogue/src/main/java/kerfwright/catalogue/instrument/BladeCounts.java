package kerfwright.catalogue.instrument;

import java.util.List;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;

/** Classes of blade counts. */
public final class BladeCounts {
  private static final List<BladeCountClass> ALL = Topic.read("blade/values.csv", BladeCounts::row);

  private BladeCounts() {}

  public static List<BladeCountClass> all() {
    return ALL;
  }

  /** Every class a bur with so many blades falls into; several may fit. */
  public static List<BladeCountClass> of(int blades) {
    return all().stream().filter(each -> each.contains(blades)).toList();
  }

  private static BladeCountClass row(DataRow row) {
    Integer low = row.whole("low");
    int high = row.whole("high", 0);
    if (high == 0 || low != null && low > high) {
      row.expected("high", "a whole number not below low");
    }
    return new BladeCountClass(
        low, high, row.required("usual_role"), row.text("ring"), row.provenance());
  }
}
