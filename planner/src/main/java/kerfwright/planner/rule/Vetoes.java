package kerfwright.planner.rule;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.HardnessRatio;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.choice.Segment;
import kerfwright.planner.plan.Purpose;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;

/** All vetoes. One rule, one class; a test accepts and refuses each. */
public final class Vetoes {
  private Vetoes() {}

  public static List<Veto> all() {
    return List.of(
        new SofterThanTheWorkCannotCut(),
        new KeptSurfaceIsNotCutAsFastAsWhatCoversIt(),
        new NeverADiamondOnAdhesive(),
        new SlipStaysInsideTheMargin(),
        new FinishingStartsFine());
  }

  /** A tool needs about 1.2 times the hardness of the layer. */
  static final class SofterThanTheWorkCannotCut implements Veto {
    @Override
    public String code() {
      return "softer-than-the-work";
    }

    @Override
    public Basis basis() {
      return Basis.FROM_MEMORY;
    }

    @Override
    public List<SourceKey> sources() {
      return List.of(new SourceKey("khrushchov-1974"), new SourceKey("richardson-1968"));
    }

    @Override
    public Optional<Exclusion> against(Candidate candidate, RuleContext context) {
      double tool = candidate.instrument().part().hardnessPa();
      double work = candidate.segment().material().typical().hardnessPa();
      return HardnessRatio.canCut(tool, work)
          ? Optional.empty()
          : Optional.of(
              new Exclusion(
                  code(),
                  "is too soft to cut "
                      + candidate.segment().material().label().toLowerCase(Locale.ROOT)));
    }
  }

  /**
   * Where a softer film lies on a harder surface that must stay whole, the instrument must remove
   * the film at least three times as fast as the surface (project setting), and not more than 10
   * micrometres of it in a slip: bonding to clean-up together cost 7.4 micrometres on average (van
   * Waes H et al. 1997).
   */
  static final class KeptSurfaceIsNotCutAsFastAsWhatCoversIt implements Veto {
    private static final double SELECTIVE = 3;
    private static final double SLIP_M = 10e-6;

    @Override
    public String code() {
      return "kept-surface-would-be-cut";
    }

    @Override
    public Basis basis() {
      return Basis.PROJECT_SETTING;
    }

    @Override
    public List<SourceKey> sources() {
      return List.of(new SourceKey("van-waes-1997"));
    }

    @Override
    public Optional<Exclusion> against(Candidate c, RuleContext context) {
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
      if (ratio >= SELECTIVE && slip <= SLIP_M) {
        return Optional.empty();
      }
      return Optional.of(
          new Exclusion(
              code(),
              String.format(
                  Locale.ROOT,
                  "would cut the enamel that must stay: resin only %.1f times as fast, %.0f um in a slip",
                  ratio,
                  slip * 1e6)));
    }
  }

  /** A slip may use up half of what is kept under the cut (project setting). */
  static final class SlipStaysInsideTheMargin implements Veto {
    private static final double SHARE = 0.5;

    @Override
    public String code() {
      return "slip-beyond-margin";
    }

    @Override
    public Basis basis() {
      return Basis.PROJECT_SETTING;
    }

    @Override
    public List<SourceKey> sources() {
      return List.of(SourceKey.COMMON_PRACTICE);
    }

    @Override
    public Optional<Exclusion> against(Candidate c, RuleContext context) {
      Segment segment = c.segment();
      boolean near = segment.purpose() == Purpose.APPROACH || segment.purpose() == Purpose.FINISH;
      if (!near || c.slipM() <= SHARE * segment.marginM()) {
        return Optional.empty();
      }
      return Optional.of(
          new Exclusion(
              code(),
              String.format(
                  Locale.ROOT,
                  "would go %.2f mm too deep before the hand reacts, half of the %.2f mm kept are allowed",
                  c.slipM() * 1e3,
                  segment.marginM() * 1e3)));
    }
  }

  /** What finishes a surface leaves Ra 2 micrometres or less: fine grit or many blades. */
  static final class FinishingStartsFine implements Veto {
    private static final double ROUGHEST_M = 2e-6;

    @Override
    public String code() {
      return "too-rough-for-finishing";
    }

    @Override
    public Basis basis() {
      return Basis.COMMON_PRACTICE;
    }

    @Override
    public List<SourceKey> sources() {
      return List.of(SourceKey.COMMON_PRACTICE);
    }

    @Override
    public Optional<Exclusion> against(Candidate c, RuleContext context) {
      if (c.segment().purpose() != Purpose.FINISH || c.raM() <= ROUGHEST_M) {
        return Optional.empty();
      }
      return Optional.of(
          new Exclusion(
              code(),
              String.format(
                  Locale.ROOT, "leaves Ra %.1f um, too rough for finishing", c.raM() * 1e6)));
    }
  }

  /** Bracket adhesive over enamel is never taken off with a diamond: it scratches the enamel. */
  static final class NeverADiamondOnAdhesive implements Veto {
    @Override
    public String code() {
      return "diamond-on-adhesive";
    }

    @Override
    public Basis basis() {
      return Basis.COMMON_PRACTICE;
    }

    @Override
    public List<SourceKey> sources() {
      return List.of(SourceKey.COMMON_PRACTICE);
    }

    @Override
    public Optional<Exclusion> against(Candidate c, RuleContext context) {
      boolean diamond = c.instrument().properties().kind().isDiamond();
      return diamond && context.guardsEnamelUnderAdhesive()
          ? Optional.of(
              new Exclusion(code(), "is a diamond and would scratch the enamel that must stay"))
          : Optional.empty();
    }
  }
}
