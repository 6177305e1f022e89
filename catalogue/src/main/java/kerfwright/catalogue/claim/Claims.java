package kerfwright.catalogue.claim;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kerfwright.catalogue.evidence.Evidence;
import kerfwright.catalogue.evidence.EvidenceRow;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.table.Faults;
import kerfwright.catalogue.table.Row;
import kerfwright.catalogue.table.Table;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;

/** The rules of thumb of the trade. */
public final class Claims {
  private static final List<String> HEADER =
      List.of("id", "for", "against", "shown_by", "source", "locator", "basis", "note");

  private final List<Claim> claims;

  private Claims(List<Claim> claims) {
    this.claims = claims;
  }

  /** The claims packaged with the catalogue. */
  public static Claims packaged() {
    return Packaged.CLAIMS;
  }

  public static Claims load(Sources sources, Evidence evidence, Faults faults) {
    List<Claim> claims = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Row row : Table.read("claim/values.csv", HEADER, faults)) {
      String id = row.uniqueId("id", seen);
      List<EvidenceRow> supporting = rows(row, "for", evidence);
      List<EvidenceRow> opposing = rows(row, "against", evidence);
      List<SourceKey> keys = sources.keys(row, "source");
      Basis basis = row.basis();
      if (keys.isEmpty()) {
        row.fault("source", "must name a source or common-practice");
      }
      if (keys.contains(SourceKey.COMMON_PRACTICE) != (basis == Basis.COMMON_PRACTICE)) {
        row.fault("basis", "must be common-practice just where the source is");
      }
      if (row.sound()) {
        String shown = row.text("shown_by");
        claims.add(new Claim(id, supporting, opposing, shown, keys, basis, row.text("note")));
      }
    }
    return new Claims(List.copyOf(claims));
  }

  private static List<EvidenceRow> rows(Row row, String column, Evidence evidence) {
    List<EvidenceRow> rows = new ArrayList<>();
    for (String id : row.list(column)) {
      Optional<EvidenceRow> found = evidence.find(id);
      if (found.isEmpty()) {
        row.fault(column, "'" + id + "' is no finding");
      }
      found.ifPresent(rows::add);
    }
    return rows;
  }

  public List<Claim> all() {
    return claims;
  }

  public Optional<Claim> find(String id) {
    return claims.stream().filter(one -> one.id().equals(id)).findFirst();
  }

  private static final class Packaged {
    static final Claims CLAIMS = read();

    private static Claims read() {
      Faults faults = new Faults();
      Claims claims = load(Sources.packaged(), Evidence.packaged(), faults);
      faults.throwIfAny();
      return claims;
    }
  }
}
