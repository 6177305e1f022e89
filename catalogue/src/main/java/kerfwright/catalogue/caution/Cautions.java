package kerfwright.catalogue.caution;

import java.util.List;
import java.util.Set;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.quantity.Finding;

/** The standing cautions that show beside every plan and print. */
public final class Cautions {
  private static final Cautions PACKAGED =
      new Cautions(Topic.read("caution/values.csv", Cautions::caution));

  private final List<Caution> cautions;

  private Cautions(List<Caution> cautions) {
    this.cautions = cautions;
  }

  /** The cautions packaged with the catalogue. */
  public static Cautions packaged() {
    return PACKAGED;
  }

  private static Caution caution(DataRow row) {
    Set<CautionCondition> when = Set.copyOf(row.each("when", CautionCondition.class));
    if (when.isEmpty()) {
      row.fault("when", "must name at least one condition");
    }
    return new Caution(row.required("id"), when, row.required("text"), row.sources(), row.basis());
  }

  public List<Caution> all() {
    return cautions;
  }

  /** The cautions that always show and those any of the conditions calls up, in their order. */
  public List<Finding> findings(Set<CautionCondition> conditions) {
    return cautions.stream()
        .filter(
            c ->
                c.when().contains(CautionCondition.ALWAYS)
                    || c.when().stream().anyMatch(conditions::contains))
        .map(Caution::finding)
        .toList();
  }
}
