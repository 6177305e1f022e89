package kerfwright.planner.rule;

import static kerfwright.quantity.Basis.SEEN;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Trait;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.rule.EvidenceRule.Choice;
import kerfwright.planner.rule.EvidenceRule.Speaks;
import kerfwright.quantity.SourceKey;

/** Published results that bear on a choice, each rule in one method named as a sentence. */
final class PublishedRules {
  private static final Set<String> COMPOSITES = Set.of("composite", "composite-aged");
  private static final double HALF_SPEED_BELOW_RPM = 150_000;

  private PublishedRules() {}

  static List<EvidenceRule> all() {
    return List.of(
        diamondsOutranCarbideOnNickelChromium(),
        carbideIsCoolerInComposite(),
        zirconiaIsCoolerAtHalfSpeed(),
        coarseGritIsMostEffectiveInZirconia(),
        fineGritCutDeepestInZirconia(),
        downCuttingNeedsLessForceInGlassCeramic(),
        strokeDoesNotChangeRoughnessOfGlassCeramic(),
        carbideLastedInGlass(),
        fineDiamondIsSmootherOnDentineMargins(),
        fineCarbideIsSmootherOnComposite(),
        sterilisingDullsDiamonds(),
        lightLoadIsAsked());
  }

  private static EvidenceRule read(
      String code,
      String source,
      Predicate<Choice> applies,
      Predicate<Choice> favours,
      Speaks speaks) {
    return new EvidenceRule(code, SEEN, List.of(new SourceKey(source)), applies, favours, speaks);
  }

  static EvidenceRule diamondsOutranCarbideOnNickelChromium() {
    return read(
        "test-diamond-on-ni-cr",
        "sam-ni-cr",
        c -> c.cuts() && c.material().has(Trait.NICKEL_CHROMIUM),
        Choice::diamond,
        Speaks.EITHER);
  }

  static EvidenceRule carbideIsCoolerInComposite() {
    return read(
        "test-carbide-cooler-in-composite",
        "mafrici-2024",
        c -> c.cuts() && COMPOSITES.contains(c.material().id()),
        c -> c.kind() == InstrumentKind.CARBIDE,
        Speaks.EITHER);
  }

  static EvidenceRule zirconiaIsCoolerAtHalfSpeed() {
    return read(
        "test-zirconia-speed",
        "turp-2024",
        c -> c.cuts() && c.zirconia(),
        c -> c.candidate().setRpm() < HALF_SPEED_BELOW_RPM,
        Speaks.EITHER);
  }

  static EvidenceRule coarseGritIsMostEffectiveInZirconia() {
    return read(
        "test-coarse-grit-zirconia",
        "uab-thesis",
        c -> c.cuts() && c.diamond() && c.zirconia(),
        Choice::coarse,
        Speaks.EITHER);
  }

  static EvidenceRule fineGritCutDeepestInZirconia() {
    return read(
        "test-fine-grit-zirconia",
        "van-aswegen-2024",
        c -> c.cuts() && c.diamond() && c.zirconia(),
        c -> !c.coarse(),
        Speaks.EITHER);
  }

  static EvidenceRule downCuttingNeedsLessForceInGlassCeramic() {
    return read(
        "test-down-cutting-forces",
        "song-2013",
        c ->
            c.glassCeramic()
                && c.diamond()
                && c.purpose() != Purpose.FINISH
                && c.stroke() != Stroke.AXIAL,
        c -> false,
        Speaks.AGAINST);
  }

  static EvidenceRule strokeDoesNotChangeRoughnessOfGlassCeramic() {
    return read(
        "test-stroke-roughness",
        "song-2013",
        c -> c.glassCeramic() && c.diamond() && c.purpose() == Purpose.FINISH,
        c -> false,
        Speaks.AGAINST);
  }

  static EvidenceRule carbideLastedInGlass() {
    return read(
        "test-carbide-lasts-in-glass",
        "fais-2009",
        c -> c.cuts() && c.material().group() == Material.Group.CERAMIC,
        c -> c.kind() == InstrumentKind.CARBIDE,
        Speaks.EITHER);
  }

  static EvidenceRule fineDiamondIsSmootherOnDentineMargins() {
    return read(
        "test-margin-finish",
        "clarke-margins",
        c -> c.purpose() == Purpose.FINISH && Procedure.CROWN_PREPARATION.equals(c.procedure()),
        Choice::diamond,
        Speaks.EITHER);
  }

  static EvidenceRule fineCarbideIsSmootherOnComposite() {
    return read(
        "test-composite-finish",
        "ferraris-conti-2014",
        c -> c.purpose() == Purpose.FINISH && COMPOSITES.contains(c.material().id()),
        c -> c.kind() == InstrumentKind.CARBIDE,
        Speaks.EITHER);
  }

  static EvidenceRule sterilisingDullsDiamonds() {
    return new EvidenceRule(
        "test-sterilising-dulls",
        SEEN,
        Stream.of("gonzaga-2019", "gureckis-1991").map(SourceKey::new).toList(),
        c -> c.diamond() && c.candidate().instrument().drawer().sterilisations() >= 5,
        c -> false,
        Speaks.AGAINST);
  }

  static EvidenceRule lightLoadIsAsked() {
    return read(
        "makers-light-load",
        "supplier-safety-notes",
        c ->
            c.cuts()
                && c.candidate().instrument().properties().shank() == ShankType.FG
                && c.diamond(),
        c -> c.candidate().loadN() <= 0.5,
        Speaks.EITHER);
  }
}
