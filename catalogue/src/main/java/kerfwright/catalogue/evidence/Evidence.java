package kerfwright.catalogue.evidence;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Numbers;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;

/** The published findings, by id. */
public final class Evidence {
  private static final List<String> HEADER =
      List.of(
          "id",
          "category",
          "sentence",
          "instrument",
          "abrasive_or_blades",
          "work_material",
          "quantity",
          "low",
          "typical",
          "high",
          "unit",
          "load_n",
          "speed_rpm",
          "coolant_ml_per_min",
          "conditions",
          "source",
          "locator",
          "basis",
          "note");
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
  private final Map<String, EvidenceRow> byId;

  private Evidence(Map<String, EvidenceRow> byId) {
    this.byId = byId;
  }

  public static Evidence packaged() {
    return Packaged.EVIDENCE;
  }

  public static Evidence load(Sources sources, Faults faults) {
    SourceRoles roles = SourceRoles.load(sources, faults);
    Map<String, EvidenceRow> byId = new LinkedHashMap<>();
    Set<String> seen = new HashSet<>();
    for (Row row : Table.read("evidence/values.csv", HEADER, faults)) {
      String id = row.uniqueId("id", seen);
      String sentence = row.required("sentence");
      Numbers numbers = row.numbers();
      String unit = row.oneOf("unit", UNITS);
      Basis basis = row.basis();
      List<SourceKey> keys = sources.keys(row, "source");
      if (keys.isEmpty()) {
        row.fault("source", "a published finding must name its source");
      }
      EvidenceRow.Role role = roles.ofRow(row, keys);
      if (row.sound()) {
        byId.put(
            id,
            new EvidenceRow(
                id,
                row.text("category"),
                sentence,
                row.text("instrument"),
                row.text("abrasive_or_blades"),
                row.text("work_material"),
                row.text("quantity"),
                numbers,
                unit,
                row.text("load_n"),
                row.text("speed_rpm"),
                row.text("coolant_ml_per_min"),
                row.text("conditions"),
                keys,
                row.text("locator"),
                basis,
                role,
                row.text("note")));
      }
    }
    return new Evidence(byId);
  }

  public List<EvidenceRow> all() {
    return List.copyOf(byId.values());
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

  private static final class Packaged {
    static final Evidence EVIDENCE = read();

    private static Evidence read() {
      Faults faults = new Faults();
      Evidence evidence = load(Sources.packaged(), faults);
      faults.throwIfAny();
      return evidence;
    }
  }
}
