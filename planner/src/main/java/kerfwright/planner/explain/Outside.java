package kerfwright.planner.explain;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.plan.Reason;
import kerfwright.planner.rule.Windows;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Message;

/** What the models alone would have chosen, where the operation does not allow it. */
public final class Outside {
  private static final double CLEARLY = 0.8;

  private Outside() {}

  /**
   * The reason against a choice.
   *
   * @param chosen the choice
   * @param open candidates with kind, grit, blades and speed left to the models
   */
  public static Optional<Reason> of(Candidate chosen, List<Candidate> open) {
    return best(open)
        .filter(c -> leavesTheWindow(c) && c.costS() < CLEARLY * chosen.costS())
        .map(
            c ->
                new Reason(
                    "model-outside-window",
                    Message.of(
                        "reason.model-outside-window",
                        c.id(),
                        Words.kind(c.instrument().properties().kind()),
                        Words.rpm(Math.rint(c.underLoadRpm() / 1000) * 1000),
                        Words.time(c.cutS()),
                        Words.time(chosen.cutS())),
                    false,
                    Basis.FITTED,
                    List.of()));
  }

  /** The cheapest of all. */
  public static Optional<Candidate> best(List<Candidate> open) {
    return open.stream()
        .min(Comparator.comparingDouble(Candidate::costS).thenComparing(Candidate::id));
  }

  /** Whether kind, grit, blades, handpiece or speed are not what the operation allows. */
  public static boolean leavesTheWindow(Candidate c) {
    InstrumentProperties p = c.instrument().properties();
    var operating = c.work().operation().operating();
    return Windows.against(p, c.work(), false).isPresent()
        || Windows.against(c.handpiece(), c.work(), false).isPresent()
        || operating.mostRpm() > 0
            && (c.underLoadRpm() > operating.mostRpm() * (1 + 1e-9)
                || c.underLoadRpm() < operating.leastRpm() * (1 - 1e-9));
  }
}
