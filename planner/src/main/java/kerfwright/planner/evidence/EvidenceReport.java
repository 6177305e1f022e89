package kerfwright.planner.evidence;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import kerfwright.catalogue.evidence.Agreement;
import kerfwright.catalogue.evidence.EvidenceCase;
import kerfwright.catalogue.evidence.EvidenceCases;
import kerfwright.catalogue.evidence.EvidenceRow;

/**
 * Every published finding against the models.
 *
 * @param compared every case with what is computed for it
 * @param notComputed why the other findings have no case, by id
 * @param summary what it comes to
 */
public record EvidenceReport(
    List<Compared> compared, Map<String, String> notComputed, Summary summary) {
  /** Samples of each case: enough that its ends hardly move with the seed. */
  public static final int SAMPLES = 1000;

  /** Samples of each case of heat. */
  public static final int HEAT_SAMPLES = 200;

  /** Seed of the samples. */
  public static final long SEED = 1;

  public EvidenceReport {
    compared = List.copyOf(compared);
  }

  /** Computes every case of the catalogue. */
  public static EvidenceReport compute() {
    EvidenceCases cases = EvidenceCases.packaged();
    Comparing comparing = new Comparing(SAMPLES, HEAT_SAMPLES, SEED);
    List<Compared> compared = cases.all().stream().map(comparing::compare).toList();
    return new EvidenceReport(compared, cases.notComputed(), Summary.of(compared));
  }

  /** How many cases of validation sources are met, by what they are about. */
  public Agreement agreement() {
    Map<EvidenceCase.About, Agreement.Count> counts = new EnumMap<>(EvidenceCase.About.class);
    for (EvidenceCase.About about : EvidenceCase.About.values()) {
      List<Compared> all =
          compared.stream()
              .filter(c -> c.asked().row().role() == EvidenceRow.Role.VALIDATION)
              .filter(c -> c.asked().figure().about() == about)
              .toList();
      int met = (int) all.stream().filter(c -> c.verdict().met()).count();
      counts.put(about, new Agreement.Count(met, all.size()));
    }
    return new Agreement(counts);
  }

  /** Cases of one finding. */
  public List<Compared> of(EvidenceRow row) {
    return compared.stream().filter(c -> c.asked().row().id().equals(row.id())).toList();
  }
}
