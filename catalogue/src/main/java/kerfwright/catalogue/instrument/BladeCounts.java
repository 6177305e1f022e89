package kerfwright.catalogue.instrument;

import java.util.List;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.table.DataFault;

/** Classes of blade counts. */
public final class BladeCounts {
  private static final Topic<BladeCountClass> TOPIC =
      Topic.read("blade", List.of("low", "high", "usual_role", "ring"), BladeCounts::row);

  private BladeCounts() {}

  public static List<BladeCountClass> all() {
    return TOPIC.rows();
  }

  /** Every class a bur with so many blades falls into; several may fit. */
  public static List<BladeCountClass> of(int blades) {
    return all().stream().filter(each -> each.contains(blades)).toList();
  }

  public static List<DataFault> dataFaults() {
    return TOPIC.faults();
  }

  private static BladeCountClass row(DataRow row) {
    var low = row.whole("low");
    var high = row.whole("high");
    if (high.isEmpty() || low.isPresent() && low.getAsInt() > high.getAsInt()) {
      row.expected("high", "a whole number not below low");
    }
    return new BladeCountClass(
        low.isPresent() ? low.getAsInt() : null,
        high.orElse(1),
        row.required("usual_role"),
        row.text("ring"),
        row.provenance());
  }
}
