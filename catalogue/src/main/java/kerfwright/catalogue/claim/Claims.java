package kerfwright.catalogue.claim;

import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.evidence.Evidence;
import kerfwright.catalogue.evidence.EvidenceRow;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;

/** The rules of thumb of the trade. */
public final class Claims {
  private static final Claims PACKAGED = new Claims(Topic.read("claim/values.csv", Claims::claim));

  private final List<Claim> claims;

  private Claims(List<Claim> claims) {
    this.claims = claims;
  }

  /** The claims packaged with the catalogue. */
  public static Claims packaged() {
    return PACKAGED;
  }

  private static Claim claim(DataRow row) {
    List<SourceKey> keys = row.sources();
    Basis basis = row.basis();
    if (keys.contains(SourceKey.COMMON_PRACTICE) != (basis == Basis.COMMON_PRACTICE)) {
      row.fault("basis", "must be common-practice just where the source is");
    }
    return new Claim(
        row.text("id"),
        rows(row, "for"),
        rows(row, "against"),
        row.text("shown_by"),
        keys,
        basis,
        row.text("note"));
  }

  private static List<EvidenceRow> rows(DataRow row, String column) {
    Evidence findings = Evidence.packaged();
    return row.words(column, findings.ids()).stream()
        .flatMap(id -> findings.find(id).stream())
        .toList();
  }

  public List<Claim> all() {
    return claims;
  }

  public Optional<Claim> find(String id) {
    return claims.stream().filter(one -> one.id().equals(id)).findFirst();
  }
}
