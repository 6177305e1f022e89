package kerfwright.validation.fit;

import java.util.Arrays;
import java.util.List;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.catalogue.evidence.EvidenceCases;
import kerfwright.catalogue.evidence.EvidenceRow;

/** Cases a fit may use; one that is no calibration is refused. */
final class Calibration {
  private Calibration() {}

  static List<EvidenceCase> cases(String... ids) {
    return Arrays.stream(ids).map(Calibration::one).toList();
  }

  static EvidenceCase one(String id) {
    EvidenceCase found =
        EvidenceCases.packaged().all().stream()
            .filter(c -> c.id().equals(id))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("There is no case '" + id + "'"));
    if (found.row().role() != EvidenceRow.Role.CALIBRATION) {
      throw new IllegalArgumentException(
          "Case '" + id + "' is " + found.row().role().id() + "; a fit takes calibration only");
    }
    return found;
  }
}
