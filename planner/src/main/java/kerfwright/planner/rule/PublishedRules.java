package kerfwright.planner.rule;

import static kerfwright.quantity.Basis.SEEN;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.material.Material;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.rule.EvidenceRule.Choice;
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
      String textFor,
      String textAgainst) {
    return new EvidenceRule(
        code, SEEN, List.of(new SourceKey(source)), applies, favours, textFor, textAgainst);
  }

  static EvidenceRule diamondsOutranCarbideOnNickelChromium() {
    return read(
        "test-diamond-on-ni-cr",
        "sam-ni-cr",
        c -> c.cuts() && c.material().id().equals("ni-cr-alloy"),
        Choice::diamond,
        "One published test on Ni-Cr: diamonds removed 20 mg/min, carbide 11 (hand-held, load not"
            + " controlled).",
        "One published test on Ni-Cr speaks against: diamonds removed 20 mg/min, carbide 11"
            + " (hand-held, load not controlled).");
  }

  static EvidenceRule carbideIsCoolerInComposite() {
    return read(
        "test-carbide-cooler-in-composite",
        "composite-removal-heat",
        c -> c.cuts() && COMPOSITES.contains(c.material().id()),
        c -> c.kind() == InstrumentKind.CARBIDE,
        "A published test removed composite cooler with carbide: 0.55 K in the pulp, dry, against"
            + " 1.66 K with diamond.",
        "A published test speaks for carbide: it warmed the pulp by 0.55 K, dry, diamond by 1.66 K.");
  }

  static EvidenceRule zirconiaIsCoolerAtHalfSpeed() {
    return read(
        "test-zirconia-speed",
        "turp-2024",
        c -> c.cuts() && c.zirconia(),
        c -> c.candidate().setRpm() < HALF_SPEED_BELOW_RPM,
        "Zirconia stayed cooler at 100 000 than at 200 000 rpm in a published test, which advises the"
            + " lower speed.",
        "A published test found 200 000 rpm quicker in zirconia but hotter inside, and advises"
            + " 100 000.");
  }

  static EvidenceRule coarseGritIsMostEffectiveInZirconia() {
    return read(
        "test-coarse-grit-zirconia",
        "uab-thesis",
        c -> c.cuts() && c.diamond() && c.zirconia(),
        Choice::coarse,
        "Of ten diamonds, coarse and super-coarse grit removed most zirconia; chipping grew with grit.",
        "Of ten diamonds, coarse and super-coarse grit removed most zirconia.");
  }

  static EvidenceRule fineGritCutDeepestInZirconia() {
    return read(
        "test-fine-grit-zirconia",
        "van-aswegen-2024",
        c -> c.cuts() && c.diamond() && c.zirconia(),
        c -> !c.coarse(),
        "Another test at 40 000 rpm and 1.7 N cut deepest with fine grit: 5.79 mm in a minute.",
        "Another test speaks for fine grit: at 40 000 rpm and 1.7 N it cut 5.79 mm in a minute, coarse"
            + " 4.54.");
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
        "",
        "On a machine, cutting with rotation needed much less force and energy in glass-ceramic; the"
            + " hand has no machine's hold.");
  }

  static EvidenceRule strokeDoesNotChangeRoughnessOfGlassCeramic() {
    return read(
        "test-stroke-roughness",
        "song-2013",
        c -> c.glassCeramic() && c.diamond() && c.purpose() == Purpose.FINISH,
        c -> false,
        "",
        "On a machine, the stroke made no difference to the roughness of glass-ceramics.");
  }

  static EvidenceRule carbideLastedInGlass() {
    return read(
        "test-carbide-lasts-in-glass",
        "fais-2009",
        c -> c.cuts() && c.material().group() == Material.Group.CERAMIC,
        c -> c.kind() == InstrumentKind.CARBIDE,
        "One carbide cut 0.26 g of glass in half an hour on a bench: its edges may last longer than"
            + " the plan takes.",
        "One carbide cut 0.26 g of glass in half an hour on a bench: carbide may last longer in"
            + " ceramic than the trade says.");
  }

  static EvidenceRule fineDiamondIsSmootherOnDentineMargins() {
    return read(
        "test-margin-finish",
        "clarke-margins",
        c -> c.purpose() == Purpose.FINISH && c.procedure() == Procedure.CROWN_PREPARATION,
        Choice::diamond,
        "On dentine margins fine diamond was smoother than carbide, which often chipped enamel.",
        "On dentine margins fine diamond was smoother than carbide in a published test.");
  }

  static EvidenceRule fineCarbideIsSmootherOnComposite() {
    return read(
        "test-composite-finish",
        "ferraris-conti-2014",
        c -> c.purpose() == Purpose.FINISH && COMPOSITES.contains(c.material().id()),
        c -> c.kind() == InstrumentKind.CARBIDE,
        "On composite, fine carbide was smoother than fine diamond; with the finest it was the other"
            + " way round.",
        "On composite, fine carbide was smoother than fine diamond in a published test.");
  }

  static EvidenceRule sterilisingDullsDiamonds() {
    return new EvidenceRule(
        "test-sterilising-dulls",
        SEEN,
        Stream.of("gonzaga-2019", "gureckis-1991").map(SourceKey::new).toList(),
        c -> c.diamond() && c.candidate().instrument().drawer().sterilisations() >= 5,
        c -> false,
        "",
        "Five sterilisations lengthened cutting by 18.5 percent in one study; another saw no loss in"
            + " ten.");
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
        "The load is within the 0.2 to 0.5 N suppliers ask for on friction-grip diamonds.",
        "Suppliers ask for 0.2 to 0.5 N on friction-grip diamonds; most dentists use about 1 N.");
  }
}
