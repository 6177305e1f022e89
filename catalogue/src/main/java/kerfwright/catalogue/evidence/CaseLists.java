package kerfwright.catalogue.evidence;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;

/**
 * Lists of cases that counts go by.
 *
 * @param frozen the validation cases of 29 November 2026, never edited
 * @param byConstruction cases that cannot fail, whatever the constants are, each with the reason
 */
public record CaseLists(Set<String> frozen, Map<String, String> byConstruction) {
  private static final List<String> FROZEN =
      List.of("id", "about", "role", "comparison", "tolerance", "low", "typical", "high", "met");
  private static final List<String> REASONS = List.of("case", "reason");

  /** The lists packaged with the catalogue. */
  public static CaseLists packaged() {
    return Packaged.LISTS;
  }

  /** Reads the packaged lists. */
  public static CaseLists load(EvidenceCases cases, Faults faults) {
    Set<String> ids = new LinkedHashSet<>();
    cases.all().forEach(c -> ids.add(c.id()));
    Set<String> frozen = new LinkedHashSet<>();
    Set<String> seen = new LinkedHashSet<>();
    for (Row row : Table.read("evidence/frozen-87.csv", FROZEN, faults)) {
      frozen.add(known(row, row.uniqueId("id", seen), "id", ids));
    }
    Map<String, String> reasons = new LinkedHashMap<>();
    for (Row row : Table.read("evidence/by-construction.csv", REASONS, faults)) {
      reasons.put(known(row, row.required("case"), "case", ids), row.required("reason"));
    }
    return new CaseLists(frozen, reasons);
  }

  private static String known(Row row, String id, String column, Set<String> ids) {
    if (!ids.contains(id)) {
      row.fault(column, "'" + id + "' is no case");
    }
    return id;
  }

  private static final class Packaged {
    static final CaseLists LISTS = read();

    private static CaseLists read() {
      Faults faults = new Faults();
      CaseLists lists = load(EvidenceCases.packaged(), faults);
      faults.throwIfAny();
      return lists;
    }
  }
}
