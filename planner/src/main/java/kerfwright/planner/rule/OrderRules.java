package kerfwright.planner.rule;

import java.util.List;
import java.util.function.BiPredicate;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.operation.Task;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.plan.Purpose;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;

/** What one step may not be after another; each rule in one method named as a sentence. */
public final class OrderRules {
  private static final double SAME = 1 + 1e-9;
  private static final List<OrderRule> ALL =
      List.of(
          anApproachIsNeitherFasterNorHarder(),
          finishingGoesFromCoarseToFine(),
          theFinishLineIsCutSlowerThanTheBulk());

  private OrderRules() {}

  /**
   * A rule on two steps that follow each other.
   *
   * @param code stable code
   * @param basis how sure it is
   * @param sources where it comes from
   * @param allows whether the second may follow the first
   */
  public record OrderRule(
      String code, Basis basis, List<SourceKey> sources, BiPredicate<Candidate, Candidate> allows)
      implements Standing {}

  public static List<OrderRule> all() {
    return ALL;
  }

  /** Whether a step may follow another. */
  public static boolean allow(Candidate before, Candidate after) {
    return ALL.stream().allMatch(rule -> rule.allows().test(before, after));
  }

  /** Near what must not be met by surprise nothing turns faster or presses harder than before. */
  static OrderRule anApproachIsNeitherFasterNorHarder() {
    return practice(
        "approach-not-faster",
        (before, after) ->
            after.purpose() != Purpose.APPROACH
                || !cuts(before)
                || after.underLoadRpm() <= before.underLoadRpm() * SAME
                    && after.rimMPerS() <= before.rimMPerS() * SAME
                    && after.loadN() <= before.loadN() * SAME);
  }

  /** On one surface no later step is coarser, or has fewer blades, than the one before. */
  static OrderRule finishingGoesFromCoarseToFine() {
    return practice(
        "coarse-to-fine",
        (before, after) ->
            cuts(before)
                || cuts(after)
                || !sameFace(before, after)
                || notCoarser(before.instrument().properties(), after.instrument().properties()));
  }

  /** A finish line is cut below the speed of the reduction before it. */
  static OrderRule theFinishLineIsCutSlowerThanTheBulk() {
    return practice(
        "finish-line-slower",
        (before, after) ->
            after.work().operation().task() != Task.FINISH_LINE
                || !cuts(before)
                || before.work().operation().task() == Task.FINISH_LINE
                || after.setRpm() <= before.setRpm() * SAME);
  }

  private static boolean cuts(Candidate c) {
    return c.purpose() == Purpose.BULK || c.purpose() == Purpose.APPROACH;
  }

  private static boolean sameFace(Candidate a, Candidate b) {
    return a.work().operation().geometry().face().equals(b.work().operation().geometry().face());
  }

  private static boolean notCoarser(InstrumentProperties before, InstrumentProperties after) {
    GritClass was = before.grit();
    GritClass is = after.grit();
    if (was != null && is != null && elastic(before) == elastic(after)) {
      return is.particleSize().typical().metres() <= was.particleSize().typical().metres();
    }
    Integer had = before.blades();
    Integer has = after.blades();
    return had == null || has == null || has >= had;
  }

  private static boolean elastic(InstrumentProperties p) {
    return p.kind() == InstrumentKind.POLISHER || p.kind() == InstrumentKind.DISC;
  }

  private static OrderRule practice(String code, BiPredicate<Candidate, Candidate> allows) {
    return new OrderRule(code, Basis.COMMON_PRACTICE, List.of(SourceKey.COMMON_PRACTICE), allows);
  }
}
