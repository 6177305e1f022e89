package kerfwright.planner.rule;

import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.material.Material;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.HardnessRatio;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.choice.Segment;
import kerfwright.planner.plan.Purpose;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.SourceKey;

/** All vetoes, each rule in one method named as a sentence; a test accepts and refuses each. */
public final class Vetoes {
  private static final double SELECTIVE = 3;
  private static final double ENAMEL_SLIP_M = 10e-6;
  private static final double MARGIN_SHARE = 0.5;
  private static final double ROUGHEST_FINISH_M = 2e-6;

  private static final double LONGEST_STEP_S = 1800;
  private static final double SLOW_RPM = 40_000;

  private static final List<Veto> ALL =
      List.of(
          softerThanTheWorkCannotCut(),
          metalCeramicAndResinAreNotGroundDry(),
          aLivingToothIsNotCutDryAtHighSpeed(),
          keptSurfaceIsNotCutAsFastAsWhatCoversIt(),
          slipStaysInsideTheMargin(),
          finishingStartsFine(),
          neverADiamondOnAdhesive(),
          noStepTakesHalfAnHour());

  private Vetoes() {}

  public static List<Veto> all() {
    return ALL;
  }

  /** A tool needs about 1.2 times the hardness of the layer. */
  static Veto softerThanTheWorkCannotCut() {
    return new Veto(
        "softer-than-the-work",
        Basis.FROM_MEMORY,
        List.of(new SourceKey("khrushchov-1974"), new SourceKey("richardson-1968")),
        Vetoes::againstSofterThanTheWorkCannotCut);
  }

  private static Optional<Exclusion> againstSofterThanTheWorkCannotCut(
      Candidate c, RuleContext context) {
    double tool = c.instrument().part().hardnessPa();
    double work = c.segment().material().typical().hardnessPa();
    return HardnessRatio.canCut(tool, work)
        ? Optional.empty()
        : Optional.of(Exclusion.of("softer-than-the-work", work(c)));
  }

  /**
   * Metal, ceramic, amalgam and resin are not ground dry: hot dust, sparks and vapour. Finishing
   * and polishing passes may be dry, and bracket adhesive is cleaned off dry.
   */
  static Veto metalCeramicAndResinAreNotGroundDry() {
    return new Veto(
        "dry-grinding",
        Basis.COMMON_PRACTICE,
        List.of(SourceKey.COMMON_PRACTICE),
        Vetoes::againstMetalCeramicAndResinAreNotGroundDry);
  }

  private static Optional<Exclusion> againstMetalCeramicAndResinAreNotGroundDry(
      Candidate c, RuleContext context) {
    Segment segment = c.segment();
    boolean bulk = segment.purpose() == Purpose.BULK || segment.purpose() == Purpose.APPROACH;
    boolean dusty =
        switch (segment.material().group()) {
          case METAL, CERAMIC, POLYMER -> true;
          case TOOTH, CEMENT, BONE -> false;
        };
    if (!context.cutCase().dry() || !bulk || !dusty || context.guardsEnamelUnderAdhesive()) {
      return Optional.empty();
    }
    return Optional.of(Exclusion.of("dry-grinding", work(c)));
  }

  /** Without water a tooth whose pulp lives is cut at slow speed only. */
  static Veto aLivingToothIsNotCutDryAtHighSpeed() {
    return new Veto(
        "dry-at-high-speed",
        Basis.COMMON_PRACTICE,
        List.of(SourceKey.COMMON_PRACTICE),
        Vetoes::againstDryAtHighSpeed);
  }

  private static Optional<Exclusion> againstDryAtHighSpeed(Candidate c, RuleContext context) {
    boolean tooth = c.segment().material().group() == Material.Group.TOOTH;
    boolean guarded = context.cutCase().dry() && context.cutCase().pulp().protectsPulp();
    if (!tooth || !guarded || c.setRpm() <= SLOW_RPM) {
      return Optional.empty();
    }
    return Optional.of(Exclusion.of("dry-at-high-speed", Rounded.places(SLOW_RPM, 0)));
  }

  /**
   * Where a softer film lies on a harder surface that must stay whole, the instrument must remove
   * the film at least three times as fast as the surface (project setting), and not more than 10
   * micrometres of it in a slip: bonding to clean-up together cost 7.4 micrometres on average (van
   * Waes H et al. 1997).
   */
  static Veto keptSurfaceIsNotCutAsFastAsWhatCoversIt() {
    return new Veto(
        "kept-surface-would-be-cut",
        Basis.PROJECT_SETTING,
        List.of(new SourceKey("van-waes-1997")),
        Vetoes::againstKeptSurfaceIsNotCutAsFastAsWhatCoversIt);
  }

  private static Optional<Exclusion> againstKeptSurfaceIsNotCutAsFastAsWhatCoversIt(
      Candidate c, RuleContext context) {
    Segment segment = c.segment();
    if (!context.guardsEnamelUnderAdhesive() || c.cut().removalM3PerS() <= 0) {
      return Optional.empty();
    }
    if (segment.purpose() == Purpose.POLISH) {
      return Optional.empty();
    }
    CutResult below = context.onKept(c);
    double ratio = c.cut().removalM3PerS() / Math.max(1e-30, below.removalM3PerS());
    double slip = context.slipM(c, below);
    if (ratio >= SELECTIVE && slip <= ENAMEL_SLIP_M) {
      return Optional.empty();
    }
    return Optional.of(
        Exclusion.of(
            "kept-surface-would-be-cut", Rounded.places(ratio, 1), Rounded.places(slip * 1e6, 0)));
  }

  /** A slip may use up half of what is kept under the cut (project setting). */
  static Veto slipStaysInsideTheMargin() {
    return new Veto(
        "slip-beyond-margin",
        Basis.PROJECT_SETTING,
        List.of(SourceKey.COMMON_PRACTICE),
        Vetoes::againstSlipStaysInsideTheMargin);
  }

  private static Optional<Exclusion> againstSlipStaysInsideTheMargin(
      Candidate c, RuleContext context) {
    Segment segment = c.segment();
    boolean near = segment.purpose() == Purpose.APPROACH || segment.purpose() == Purpose.FINISH;
    if (!near || c.slipM() <= MARGIN_SHARE * segment.marginM()) {
      return Optional.empty();
    }
    return Optional.of(
        Exclusion.of(
            "slip-beyond-margin",
            Rounded.places(c.slipM() * 1e3, 2),
            Rounded.places(segment.marginM() * 1e3, 2)));
  }

  /** What finishes a surface leaves Ra 2 micrometres or less: fine grit or many blades. */
  static Veto finishingStartsFine() {
    return new Veto(
        "too-rough-for-finishing",
        Basis.COMMON_PRACTICE,
        List.of(SourceKey.COMMON_PRACTICE),
        Vetoes::againstFinishingStartsFine);
  }

  private static Optional<Exclusion> againstFinishingStartsFine(Candidate c, RuleContext context) {
    if (c.segment().purpose() != Purpose.FINISH || c.raM() <= ROUGHEST_FINISH_M) {
      return Optional.empty();
    }
    return Optional.of(Exclusion.of("too-rough-for-finishing", Rounded.places(c.raM() * 1e6, 1)));
  }

  /** Bracket adhesive over enamel is never taken off with a diamond: it scratches the enamel. */
  static Veto neverADiamondOnAdhesive() {
    return new Veto(
        "diamond-on-adhesive",
        Basis.COMMON_PRACTICE,
        List.of(SourceKey.COMMON_PRACTICE),
        Vetoes::againstNeverADiamondOnAdhesive);
  }

  private static Optional<Exclusion> againstNeverADiamondOnAdhesive(
      Candidate c, RuleContext context) {
    boolean diamond = c.instrument().properties().kind().isDiamond();
    return diamond && context.guardsEnamelUnderAdhesive()
        ? Optional.of(Exclusion.of("diamond-on-adhesive"))
        : Optional.empty();
  }

  /** Half an hour of cutting in one step is no way to cut it (project setting). */
  static Veto noStepTakesHalfAnHour() {
    return new Veto(
        "too-slow",
        Basis.PROJECT_SETTING,
        List.of(SourceKey.COMMON_PRACTICE),
        Vetoes::againstHalfAnHour);
  }

  private static Optional<Exclusion> againstHalfAnHour(Candidate c, RuleContext context) {
    return c.cutS() <= LONGEST_STEP_S
        ? Optional.empty()
        : Optional.of(Exclusion.of("too-slow", Rounded.places(c.cutS() / 60, 0)));
  }

  private static Message work(Candidate c) {
    return Message.of("label.material-" + c.segment().material().id());
  }
}
