package kerfwright.planner.rule;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.material.Trait;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.HardnessRatio;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.choice.LastResort;
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
  private static final int FEWEST_FINISHING_BLADES = 12;
  private static final int MOST_FINISHING_BLADES = 40;
  private static final double FINISHING_GRAIN_M = 63e-6;
  private static final double FASTEST_IN_DECAY_RPM = 4_000;

  private static final double LONGEST_STEP_S = 1800;
  private static final double SLOW_RPM = 40_000;

  private static final Set<String> HOLLOW_FACES = Set.of("occlusal", "lingual", "chamber", "root");
  private static final List<Veto> ALL =
      List.of(
          veto(
              "softer-than-the-work",
              Basis.FROM_MEMORY,
              Vetoes::softerThanTheWorkCannotCut,
              "khrushchov-1974",
              "richardson-1968"),
          veto("dry-grinding", Basis.COMMON_PRACTICE, Vetoes::metalCeramicAndResinAreNotGroundDry),
          veto(
              "dry-at-high-speed",
              Basis.COMMON_PRACTICE,
              Vetoes::aLivingToothIsNotCutDryAtHighSpeed),
          veto(
              "kept-surface-would-be-cut",
              Basis.PROJECT_SETTING,
              Vetoes::keptSurfaceIsNotCutAsFastAsWhatCoversIt,
              "van-waes-1997"),
          veto("slip-beyond-margin", Basis.PROJECT_SETTING, Vetoes::slipStaysInsideTheMargin),
          veto("not-a-finisher", Basis.COMMON_PRACTICE, Vetoes::finishingBelongsToFinishers),
          veto(
              "decay-is-cut-slowly",
              Basis.COMMON_PRACTICE,
              Vetoes::decayOverALivingPulpIsCutSlowly),
          veto("disc-in-a-hollow", Basis.COMMON_PRACTICE, Vetoes::aDiscStaysOnFlatFaces),
          veto(
              "zirconia-wants-diamond",
              Basis.COMMON_PRACTICE,
              Vetoes::zirconiaIsPolishedWithDiamond),
          veto("diamond-on-adhesive", Basis.COMMON_PRACTICE, Vetoes::neverADiamondOnAdhesive),
          veto("too-slow", Basis.PROJECT_SETTING, Vetoes::noStepTakesHalfAnHour));

  private Vetoes() {}

  /** A veto by its code; without a source it is of the trade. */
  private static Veto veto(
      String code,
      Basis basis,
      BiFunction<Candidate, RuleContext, Optional<Exclusion>> against,
      String... sources) {
    List<SourceKey> keys = Stream.of(sources).map(SourceKey::new).toList();
    return new Veto(
        code, basis, keys.isEmpty() ? List.of(SourceKey.COMMON_PRACTICE) : keys, against);
  }

  public static List<Veto> all() {
    return ALL;
  }

  /** A tool needs about 1.2 times the hardness of the layer. */
  private static Optional<Exclusion> softerThanTheWorkCannotCut(Candidate c, RuleContext context) {
    double tool = c.instrument().part().hardnessPa();
    double work = c.material().typical().hardnessPa();
    return HardnessRatio.canCut(tool, work)
        ? Optional.empty()
        : Optional.of(Exclusion.of("softer-than-the-work", work(c)));
  }

  /**
   * Metal, ceramic, amalgam and resin are not ground dry: hot dust, sparks and vapour. Finishing
   * and polishing passes may be dry, and bracket adhesive is cleaned off dry.
   */
  private static Optional<Exclusion> metalCeramicAndResinAreNotGroundDry(
      Candidate c, RuleContext context) {
    boolean bulk = c.purpose() == Purpose.BULK || c.purpose() == Purpose.APPROACH;
    boolean dusty =
        switch (c.material().group()) {
          case METAL, CERAMIC, POLYMER -> true;
          case TOOTH, CEMENT, BONE -> false;
        };
    if (!context.cutCase().dry() || !bulk || !dusty || context.guardsEnamelUnderAdhesive()) {
      return Optional.empty();
    }
    return Optional.of(Exclusion.of("dry-grinding", work(c)));
  }

  /** Without water nothing on a tooth whose pulp lives is cut above slow speed, no layer of it. */
  private static Optional<Exclusion> aLivingToothIsNotCutDryAtHighSpeed(
      Candidate c, RuleContext context) {
    boolean guarded = context.cutCase().dry() && context.cutCase().pulp().protectsPulp();
    if (!guarded || c.setRpm() <= SLOW_RPM) {
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
  private static Optional<Exclusion> keptSurfaceIsNotCutAsFastAsWhatCoversIt(
      Candidate c, RuleContext context) {
    if (!context.guardsEnamelUnderAdhesive() || c.cut().removalM3PerS() <= 0) {
      return Optional.empty();
    }
    if (c.purpose() == Purpose.POLISH) {
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
  private static Optional<Exclusion> slipStaysInsideTheMargin(Candidate c, RuleContext context) {
    boolean near = c.purpose() == Purpose.APPROACH || c.purpose() == Purpose.FINISH;
    double margin = c.work().marginM();
    if (!near || c.slipM() <= MARGIN_SHARE * margin) {
      return Optional.empty();
    }
    return Optional.of(
        Exclusion.of(
            "slip-beyond-margin",
            Rounded.places(c.slipM() * 1e3, 2),
            Rounded.places(margin * 1e3, 2)));
  }

  /** Finishing belongs to 12 to 40 blades, to grains up to 63 micrometres, to discs and cups. */
  private static Optional<Exclusion> finishingBelongsToFinishers(Candidate c, RuleContext context) {
    boolean finishes = c.purpose() == Purpose.FINISH || c.purpose() == Purpose.POLISH;
    if (!finishes || finisher(c.instrument().properties())) {
      return Optional.empty();
    }
    return Optional.of(Exclusion.of("not-a-finisher"));
  }

  private static boolean finisher(InstrumentProperties p) {
    Integer blades = p.blades();
    GritClass grit = p.grit();
    return switch (p.kind()) {
      case POLISHER, DISC -> true;
      case DIAMOND, SINTERED_DIAMOND, STONE ->
          grit != null && grit.particleSize().high().metres() <= FINISHING_GRAIN_M + 1e-9;
      case CARBIDE, STEEL, CERAMIC, POLYMER ->
          blades != null && blades >= FEWEST_FINISHING_BLADES && blades <= MOST_FINISHING_BLADES;
    };
  }

  /** Decay over a living pulp is taken by a slow round bur, 4000 per minute at most. */
  private static Optional<Exclusion> decayOverALivingPulpIsCutSlowly(
      Candidate c, RuleContext context) {
    InstrumentProperties p = c.instrument().properties();
    boolean decay = c.parts().stream().anyMatch(part -> part.material().has(Trait.CARIOUS));
    boolean slow =
        p.kind().bladed()
            && p.shape() == ShapeFamily.ROUND
            && c.setRpm() <= FASTEST_IN_DECAY_RPM * (1 + 1e-9);
    return decay && context.cutCase().pulp().protectsPulp() && !slow
        ? Optional.of(Exclusion.of("decay-is-cut-slowly", Rounded.places(FASTEST_IN_DECAY_RPM, 0)))
        : Optional.empty();
  }

  /** A disc stays on flat and bulging faces: in a fossa its edge cuts a groove. */
  private static Optional<Exclusion> aDiscStaysOnFlatFaces(Candidate c, RuleContext context) {
    boolean disc = c.instrument().properties().shape() == ShapeFamily.DISC;
    return disc && HOLLOW_FACES.contains(c.work().operation().geometry().face())
        ? Optional.of(Exclusion.of("disc-in-a-hollow"))
        : Optional.empty();
  }

  /** Zirconia is polished by diamond: softer grains only warm it. */
  private static Optional<Exclusion> zirconiaIsPolishedWithDiamond(
      Candidate c, RuleContext context) {
    InstrumentProperties p = c.instrument().properties();
    boolean elastic = p.kind() == InstrumentKind.POLISHER || p.kind() == InstrumentKind.DISC;
    return c.material().has(Trait.ZIRCONIA) && elastic && !p.abrasive().equals("diamond")
        ? Optional.of(Exclusion.of("zirconia-wants-diamond"))
        : Optional.empty();
  }

  /** Bracket adhesive over enamel is never taken off with a diamond: it scratches the enamel. */
  private static Optional<Exclusion> neverADiamondOnAdhesive(Candidate c, RuleContext context) {
    boolean diamond = c.instrument().properties().kind().isDiamond();
    return diamond && context.guardsEnamelUnderAdhesive()
        ? Optional.of(Exclusion.of("diamond-on-adhesive"))
        : Optional.empty();
  }

  /**
   * Half an hour of cutting in one step is no way to cut it (project setting); a last resort says
   * itself how long it takes.
   */
  private static Optional<Exclusion> noStepTakesHalfAnHour(Candidate c, RuleContext context) {
    return c.cutS() <= LONGEST_STEP_S || c.resort() != LastResort.NONE
        ? Optional.empty()
        : Optional.of(Exclusion.of("too-slow", Rounded.places(c.cutS() / 60, 0)));
  }

  private static Message work(Candidate c) {
    return Message.of("label.material-" + c.material().id());
  }
}
