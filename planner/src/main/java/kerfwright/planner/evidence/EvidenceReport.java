package kerfwright.planner.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.catalogue.evidence.Discrepancies;
import kerfwright.catalogue.evidence.EvidenceCases;
import kerfwright.catalogue.evidence.EvidenceRow;
import kerfwright.catalogue.evidence.Family;

/**
 * Every published finding against the models.
 *
 * @param compared every case with what is computed for it
 * @param notComputed why the other findings have no case, by id
 * @param discrepancies what published figures lie off the models, fitted anew
 * @param coverage how the bands hold on studies left out, all families first
 * @param conditioned the same for the other figures of a study once its first is known
 * @param summary what it comes to
 */
public record EvidenceReport(
    List<Compared> compared,
    Map<String, String> notComputed,
    Discrepancies discrepancies,
    List<Coverage> coverage,
    List<Conditioned> conditioned,
    Summary summary) {
  /** Samples of each case: enough that its ends hardly move with the seed. */
  public static final int SAMPLES = 1000;

  /** Samples of each case of heat. */
  public static final int HEAT_SAMPLES = 200;

  /** Seed of the samples. */
  public static final long SEED = 1;

  public EvidenceReport {
    compared = List.copyOf(compared);
    coverage = List.copyOf(coverage);
    conditioned = List.copyOf(conditioned);
  }

  /** Computes every case of the catalogue. */
  public static EvidenceReport compute() {
    EvidenceCases cases = EvidenceCases.packaged();
    Comparing raw = new Comparing(SAMPLES, HEAT_SAMPLES, SEED, Discrepancies.packaged());
    List<Residual> residuals = Residual.all(raw, cases.all());
    Discrepancies fitted =
        DiscrepancyFit.of(residuals.stream().filter(Residual::calibration).toList());
    Comparing comparing = raw.with(fitted);
    List<Compared> compared = cases.all().stream().map(comparing::compare).toList();
    List<Coverage.Left> left = Coverage.leftOut(residuals, raw, SEED);
    List<Coverage> coverage = new ArrayList<>();
    coverage.add(Coverage.of(null, left));
    for (Family family : Family.values()) {
      coverage.add(Coverage.of(family, left));
    }
    return new EvidenceReport(
        compared,
        cases.notComputed(),
        fitted,
        coverage,
        Conditioned.all(residuals, raw),
        Summary.of(compared));
  }

  /** Cases of one finding. */
  public List<Compared> of(EvidenceRow row) {
    return compared.stream().filter(c -> c.asked().row().id().equals(row.id())).toList();
  }
}
