package kerfwright.catalogue.evidence;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.table.Faults;

/**
 * Lists of cases that counts go by.
 *
 * @param frozen the validation cases of 29 November 2026, never edited
 * @param byConstruction cases that cannot fail, whatever the constants are, each with the reason
 */
public record CaseLists(Set<String> frozen, Map<String, String> byConstruction) {
  private static final CaseLists PACKAGED = Topic.sound(CaseLists::read);

  /** The lists packaged with the catalogue. */
  public static CaseLists packaged() {
    return PACKAGED;
  }

  private static CaseLists read(Faults faults) {
    Set<String> frozen =
        new LinkedHashSet<>(Topic.read("evidence/frozen-87.csv", faults, row -> known(row, "id")));
    Map<String, String> reasons = new LinkedHashMap<>();
    Topic.read(
        "evidence/by-construction.csv",
        faults,
        row -> reasons.put(known(row, "case"), row.required("reason")));
    return new CaseLists(frozen, reasons);
  }

  private static String known(DataRow row, String column) {
    String id = row.required(column);
    if (EvidenceCases.packaged().all().stream().noneMatch(one -> one.id().equals(id))) {
      row.fault(column, "'" + id + "' is no case");
    }
    return id;
  }
}
