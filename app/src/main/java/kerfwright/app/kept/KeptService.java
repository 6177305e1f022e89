package kerfwright.app.kept;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import kerfwright.app.storage.cases.KeptCases;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.plan.CutPlan;
import kerfwright.practice.kept.KeptCase;
import kerfwright.practice.kept.KeptCaseQuery;

/** Keeps a case whenever it is planned. */
public final class KeptService {
  private static final int ATTEMPTS = 3;

  private final KeptCases cases;
  private final Supplier<UUID> ids;
  private final Clock clock;

  public KeptService(KeptCases cases, Supplier<UUID> ids, Clock clock) {
    this.cases = cases;
    this.ids = ids;
    this.clock = clock;
  }

  KeptCases cases() {
    return cases;
  }

  /** The case planned or changed last. */
  public Optional<KeptCase> newest() {
    return cases.list(KeptCaseQuery.newest(1)).stream().findFirst();
  }

  /** The case of a reference, tooth and procedure, as it stands now. */
  public Optional<KeptCase> of(CutCase cutCase) {
    return cases.find(cutCase.reference(), cutCase.tooth(), cutCase.procedure().id());
  }

  /**
   * Keeps a planned case; the same form planned again adds nothing. Nothing is kept of a case
   * without the practice's own reference: nobody would find it again.
   *
   * @param form the fields of the case as an address carries them
   */
  public Optional<KeptCase> keep(CutPlan plan, String form) {
    return keep(plan.cutCase(), form, steps(plan));
  }

  /** Keeps a case that is not planned yet. */
  public Optional<KeptCase> keep(CutCase cutCase, String form) {
    return keep(cutCase, form, List.of());
  }

  private Optional<KeptCase> keep(CutCase cutCase, String form, List<KeptCase.Step> steps) {
    if (cutCase.filled("case").isPresent()) {
      return Optional.empty();
    }
    for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
      Optional<KeptCase> before = of(cutCase);
      if (before.isPresent()
          && before.get().form().equals(form)
          && before.get().steps().isEmpty() == steps.isEmpty()) {
        return before;
      }
      var now = clock.instant().truncatedTo(ChronoUnit.MICROS);
      KeptCase next =
          before
              .map(one -> one.next(now, form, steps))
              .orElseGet(
                  () ->
                      new KeptCase(
                          ids.get(),
                          1,
                          cutCase.reference(),
                          cutCase.tooth(),
                          cutCase.procedure().id(),
                          now,
                          form,
                          steps));
      if (cases.keep(next)) {
        return Optional.of(next);
      }
    }
    return of(cutCase);
  }

  private static List<KeptCase.Step> steps(CutPlan plan) {
    return plan.steps().stream()
        .map(
            step ->
                new KeptCase.Step(
                    step.operation().row().variant() + "." + step.operation().row().id(),
                    step.instrument().id(),
                    step.setSpeedRpm(),
                    step.loadN().typical(),
                    step.times().cutS().typical()))
        .toList();
  }
}
