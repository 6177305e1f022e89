package kerfwright.catalogue.evidence;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.quantity.SourceKey;

/** The published findings, by id. */
public final class Evidence {
  private static final List<String> UNITS =
      List.of(
          "%",
          "1",
          "J/mm3",
          "K",
          "N",
          "N mm",
          "W",
          "cuts",
          "cycles",
          "degC",
          "g",
          "mL/min",
          "mg/min",
          "mm",
          "mm3",
          "mm3/min",
          "mm3/s",
          "nm",
          "none",
          "preparations",
          "rpm",
          "s",
          "um",
          "um^-0.5");
  private static final Evidence PACKAGED =
      new Evidence(Topic.byId(Topic.read("evidence/values.csv", Evidence::row), EvidenceRow::id));

  private final Map<String, EvidenceRow> byId;

  private Evidence(Map<String, EvidenceRow> byId) {
    this.byId = byId;
  }

  public static Evidence packaged() {
    return PACKAGED;
  }

  private static EvidenceRow row(DataRow row) {
    List<SourceKey> keys = row.sources();
    return new EvidenceRow(
        row.text("id"),
        row.text("category"),
        row.required("sentence"),
        row.text("instrument"),
        row.text("abrasive_or_blades"),
        row.text("work_material"),
        row.text("quantity"),
        row.numbers(),
        row.oneOf("unit", UNITS),
        row.text("load_n"),
        row.text("speed_rpm"),
        row.text("coolant_ml_per_min"),
        row.text("conditions"),
        keys,
        row.text("locator"),
        row.basis(),
        SourceRoles.packaged().ofRow(row, keys),
        row.text("note"));
  }

  public List<EvidenceRow> all() {
    return List.copyOf(byId.values());
  }

  /** Ids of the findings. */
  public Set<String> ids() {
    return byId.keySet();
  }

  public Optional<EvidenceRow> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** A finding known to exist; an unknown id is a fault of the program. */
  public EvidenceRow get(String id) {
    return find(id)
        .orElseThrow(() -> new IllegalArgumentException("There is no evidence row '" + id + "'"));
  }

  /** Findings of one topic. */
  public List<EvidenceRow> inCategory(String category) {
    return byId.values().stream().filter(r -> r.category().equals(category)).toList();
  }
}
