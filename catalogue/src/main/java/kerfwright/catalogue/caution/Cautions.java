package kerfwright.catalogue.caution;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Identified;
import kerfwright.quantity.SourceKey;

/** The standing cautions that show beside every plan and print. */
public final class Cautions {
  private static final List<String> HEADER =
      List.of("id", "when", "text", "source", "locator", "basis", "note");

  private final List<Caution> cautions;

  private Cautions(List<Caution> cautions) {
    this.cautions = cautions;
  }

  /** The cautions packaged with the catalogue. */
  public static Cautions packaged() {
    return Packaged.CAUTIONS;
  }

  public static Cautions load(Sources sources, Faults faults) {
    List<Caution> cautions = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Row row : Table.read("caution/values.csv", HEADER, faults)) {
      String id = row.uniqueId("id", seen);
      Set<CautionCondition> when = conditions(row);
      String text = row.required("text");
      Basis basis = row.basis();
      List<SourceKey> keys = sources.keys(row, "source");
      if (keys.isEmpty()) {
        row.fault("source", "must name a source or common-practice");
      }
      if (row.sound()) {
        cautions.add(new Caution(id, when, text, keys, basis));
      }
    }
    return new Cautions(List.copyOf(cautions));
  }

  private static Set<CautionCondition> conditions(Row row) {
    Set<CautionCondition> when = EnumSet.noneOf(CautionCondition.class);
    for (String word : row.list("when")) {
      Optional<CautionCondition> condition = Identified.of(CautionCondition.class, word);
      if (condition.isEmpty()) {
        row.fault("when", "'" + word + "' is no known condition");
      }
      condition.ifPresent(when::add);
    }
    if (when.isEmpty()) {
      row.fault("when", "must name at least one condition");
    }
    return when;
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

  private static final class Packaged {
    static final Cautions CAUTIONS = read();

    private static Cautions read() {
      Faults faults = new Faults();
      Cautions cautions = load(Sources.packaged(), faults);
      faults.throwIfAny();
      return cautions;
    }
  }
}
