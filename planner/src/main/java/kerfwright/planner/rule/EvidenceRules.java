package kerfwright.planner.rule;

import static kerfwright.quantity.Basis.COMMON_PRACTICE;
import static kerfwright.quantity.Basis.SEEN;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.material.Material;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.choice.Forms;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.rule.EvidenceRule.Choice;
import kerfwright.quantity.SourceKey;

/** Evidence from the literature and from the trade, each rule in one method named as a sentence. */
public final class EvidenceRules {
  private static final Set<String> COMPOSITES = Set.of("composite", "composite-aged");
  private static final Set<String> ZIRCONIAS = Set.of("zirconia-3y", "zirconia-5y");
  private static final double HALF_SPEED_BELOW_RPM = 150_000;
  private static final double LOW_SPEED_RPM = 40_000;

  private EvidenceRules() {}

  public static List<EvidenceRule> all() {
    return List.of(
        brittleLayersWantDiamond(),
        ductileLayersWantCarbide(),
        diamondsOutranCarbideOnNickelChromium(),
        carbideIsCoolerInComposite(),
        zirconiaIsCoolerAtHalfSpeed(),
        coarseGritIsMostEffectiveInZirconia(),
        fineGritCutDeepestInZirconia(),
        sinteredDiamondForZirconia(),
        againstRotationRemovesMost(),
        withRotationForFinishing(),
        downCuttingNeedsLessForceInGlassCeramic(),
        strokeDoesNotChangeRoughnessOfGlassCeramic(),
        sixToEightBladesForACavity(),
        fewBladesForMetal(),
        manyBladesOnAdhesive(),
        roundedInnerCorners(),
        straightSidesForWalls(),
        carbideLastedInGlass(),
        fineDiamondIsSmootherOnDentineMargins(),
        fineCarbideIsSmootherOnComposite(),
        sterilisingDullsDiamonds(),
        lightLoadIsAsked(),
        slowSpeedOverThePulp());
  }

  private static SourceKey key(String key) {
    return new SourceKey(key);
  }

  private static InstrumentKind kind(Choice c) {
    return c.candidate().instrument().properties().kind();
  }

  private static Material material(Choice c) {
    return c.candidate().segment().material();
  }

  private static boolean cuts(Choice c) {
    return c.candidate().segment().purpose() != Purpose.POLISH;
  }

  private static int blades(Choice c) {
    Integer blades = c.candidate().instrument().properties().blades();
    return blades == null ? 0 : blades;
  }

  private static boolean diamond(Choice c) {
    return kind(c).isDiamond();
  }

  private static EvidenceRule practice(
      String code,
      Predicate<Choice> applies,
      Predicate<Choice> favours,
      String textFor,
      String textAgainst) {
    return new EvidenceRule(
        code,
        COMMON_PRACTICE,
        List.of(SourceKey.COMMON_PRACTICE),
        applies,
        favours,
        textFor,
        textAgainst);
  }

  private static EvidenceRule read(
      String code,
      String source,
      Predicate<Choice> applies,
      Predicate<Choice> favours,
      String textFor,
      String textAgainst) {
    return new EvidenceRule(
        code, SEEN, List.of(key(source)), applies, favours, textFor, textAgainst);
  }

  static EvidenceRule brittleLayersWantDiamond() {
    return practice(
        "practice-diamond-for-brittle",
        c ->
            cuts(c)
                && (material(c).id().equals("enamel")
                    || material(c).id().equals("composite")
                    || material(c).group() == Material.Group.CERAMIC)
                && !c.context().guardsEnamelUnderAdhesive(),
        EvidenceRules::diamond,
        "Enamel, ceramics and fresh composite are brittle: they are cut with diamond.",
        "Enamel, ceramics and fresh composite are brittle and are usually cut with diamond.");
  }

  static EvidenceRule ductileLayersWantCarbide() {
    return practice(
        "practice-carbide-for-ductile",
        c ->
            cuts(c)
                && (material(c).id().equals("dentine")
                    || material(c).group() == Material.Group.METAL),
        c -> kind(c).bladed(),
        "Dentine and metals are ductile: they are cut with a bladed carbide.",
        "Dentine and metals are ductile and are usually cut with a bladed carbide; diamond clogs.");
  }

  static EvidenceRule diamondsOutranCarbideOnNickelChromium() {
    return read(
        "test-diamond-on-ni-cr",
        "sam-ni-cr",
        c -> cuts(c) && material(c).id().equals("ni-cr-alloy"),
        EvidenceRules::diamond,
        "One published test on Ni-Cr: diamonds removed 20 mg/min, carbide 11 (hand-held, load not"
            + " controlled).",
        "One published test on Ni-Cr speaks against: diamonds removed 20 mg/min, carbide 11"
            + " (hand-held, load not controlled).");
  }

  static EvidenceRule carbideIsCoolerInComposite() {
    return read(
        "test-carbide-cooler-in-composite",
        "composite-removal-heat",
        c -> cuts(c) && COMPOSITES.contains(material(c).id()),
        c -> kind(c) == InstrumentKind.CARBIDE,
        "A published test removed composite cooler with carbide: 0.55 K in the pulp, dry, against"
            + " 1.66 K with diamond.",
        "A published test speaks for carbide: it warmed the pulp by 0.55 K, dry, diamond by 1.66 K.");
  }

  static EvidenceRule zirconiaIsCoolerAtHalfSpeed() {
    return read(
        "test-zirconia-speed",
        "turp-2024",
        c -> cuts(c) && ZIRCONIAS.contains(material(c).id()),
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
        c -> cuts(c) && diamond(c) && ZIRCONIAS.contains(material(c).id()),
        EvidenceRules::coarse,
        "Of ten diamonds, coarse and super-coarse grit removed most zirconia; chipping grew with grit.",
        "Of ten diamonds, coarse and super-coarse grit removed most zirconia.");
  }

  static EvidenceRule fineGritCutDeepestInZirconia() {
    return read(
        "test-fine-grit-zirconia",
        "van-aswegen-2024",
        c -> cuts(c) && diamond(c) && ZIRCONIAS.contains(material(c).id()),
        c -> !coarse(c),
        "Another test at 40 000 rpm and 1.7 N cut deepest with fine grit: 5.79 mm in a minute.",
        "Another test speaks for fine grit: at 40 000 rpm and 1.7 N it cut 5.79 mm in a minute, coarse"
            + " 4.54.");
  }

  private static boolean coarse(Choice c) {
    GritClass grit = c.candidate().instrument().properties().grit();
    return grit == GritClass.COARSE || grit == GritClass.EXTRA_COARSE;
  }

  static EvidenceRule sinteredDiamondForZirconia() {
    return practice(
        "practice-sintered-for-zirconia",
        c -> cuts(c) && diamond(c) && ZIRCONIAS.contains(material(c).id()),
        c -> kind(c) == InstrumentKind.SINTERED_DIAMOND,
        "Zirconia wears a single layer of grain quickly; a sintered diamond has grain in reserve.",
        "A sintered diamond, where there is one, lasts longer in zirconia.");
  }

  static EvidenceRule againstRotationRemovesMost() {
    return practice(
        "practice-against-rotation",
        c -> c.candidate().stroke() == Stroke.AGAINST_ROTATION,
        c -> true,
        "Led against rotation the wall pushes the handpiece back, so the hand can press: it removes"
            + " most and cannot run away.",
        "");
  }

  static EvidenceRule withRotationForFinishing() {
    return practice(
        "practice-with-rotation-finish",
        c -> c.candidate().stroke() == Stroke.WITH_ROTATION,
        c -> c.candidate().segment().purpose() == Purpose.FINISH,
        "Finished with rotation in single strokes, lifted back between them, not scrubbed.",
        "With rotation the instrument pulls on and can run away; it removes less.");
  }

  static EvidenceRule downCuttingNeedsLessForceInGlassCeramic() {
    return read(
        "test-down-cutting-forces",
        "song-2013",
        c ->
            glassCeramic(c)
                && diamond(c)
                && c.candidate().segment().purpose() != Purpose.FINISH
                && c.candidate().stroke() != Stroke.AXIAL,
        c -> false,
        "",
        "On a machine, cutting with rotation needed much less force and energy in glass-ceramic; the"
            + " hand has no machine's hold.");
  }

  static EvidenceRule strokeDoesNotChangeRoughnessOfGlassCeramic() {
    return read(
        "test-stroke-roughness",
        "song-2013",
        c -> glassCeramic(c) && diamond(c) && c.candidate().segment().purpose() == Purpose.FINISH,
        c -> false,
        "",
        "On a machine, the stroke made no difference to the roughness of glass-ceramics.");
  }

  private static boolean glassCeramic(Choice c) {
    return Set.of("feldspathic-porcelain", "leucite-glass-ceramic").contains(material(c).id());
  }

  static EvidenceRule sixToEightBladesForACavity() {
    return practice(
        "practice-cavity-blades",
        c ->
            c.context().cutCase().procedure() == Procedure.CAVITY_PREPARATION
                && kind(c) == InstrumentKind.CARBIDE,
        c -> blades(c) >= 6 && blades(c) <= 8,
        "A 6- to 8-blade carbide makes the first punch and leaves smooth dentine walls.",
        "For a cavity a 6- to 8-blade carbide is usual: fewer blades leave rough walls, more cut"
            + " slowly.");
  }

  static EvidenceRule fewBladesForMetal() {
    return practice(
        "practice-few-blades-metal",
        c ->
            cuts(c)
                && material(c).group() == Material.Group.METAL
                && kind(c) == InstrumentKind.CARBIDE,
        c -> blades(c) <= 8,
        "Few blades with wide flutes take a thick chip: the usual choice for metal.",
        "Metal is usually cut with few blades and wide flutes.");
  }

  static EvidenceRule manyBladesOnAdhesive() {
    return practice(
        "practice-adhesive-clean-up",
        c -> c.context().cutCase().procedure() == Procedure.ADHESIVE_CLEAN_UP && cuts(c),
        c -> blades(c) >= 12 || kind(c) == InstrumentKind.POLYMER,
        "Aged adhesive has taken up water and softened: many blades take it off and spare the enamel;"
            + " never a diamond.",
        "Diamonds and coarse carbides mark the enamel under the adhesive.");
  }

  static EvidenceRule roundedInnerCorners() {
    return practice(
        "practice-rounded-corners",
        c -> c.context().cutCase().procedure() == Procedure.CAVITY_PREPARATION && cuts(c),
        c -> !c.candidate().instrument().properties().shape().leavesSharpCorner(),
        "A rounded end leaves rounded inner corners, which spare the tooth.",
        "A flat end leaves sharp inner corners.");
  }

  static EvidenceRule straightSidesForWalls() {
    return practice(
        "practice-straight-sides",
        c ->
            cuts(c)
                && (c.context().cutCase().procedure() == Procedure.CROWN_PREPARATION
                    || c.context().cutCase().procedure() == Procedure.VENEER_PREPARATION),
        c ->
            !Forms.wrongFor(c.context().cutCase(), c.candidate().instrument().properties().shape()),
        "A straight or tapered side makes wall and finish line in one.",
        "Walls and finish lines are made with a straight or tapered side.");
  }

  static EvidenceRule carbideLastedInGlass() {
    return read(
        "test-carbide-lasts-in-glass",
        "fais-2009",
        c -> cuts(c) && material(c).group() == Material.Group.CERAMIC,
        c -> kind(c) == InstrumentKind.CARBIDE,
        "One carbide cut 0.26 g of glass in half an hour on a bench: its edges may last longer than"
            + " the plan takes.",
        "One carbide cut 0.26 g of glass in half an hour on a bench: carbide may last longer in"
            + " ceramic than the trade says.");
  }

  static EvidenceRule fineDiamondIsSmootherOnDentineMargins() {
    return read(
        "test-margin-finish",
        "clarke-margins",
        c ->
            c.candidate().segment().purpose() == Purpose.FINISH
                && c.context().cutCase().procedure() == Procedure.CROWN_PREPARATION,
        EvidenceRules::diamond,
        "On dentine margins fine diamond was smoother than carbide, which often chipped enamel.",
        "On dentine margins fine diamond was smoother than carbide in a published test.");
  }

  static EvidenceRule fineCarbideIsSmootherOnComposite() {
    return read(
        "test-composite-finish",
        "ferraris-conti-2014",
        c ->
            c.candidate().segment().purpose() == Purpose.FINISH
                && COMPOSITES.contains(material(c).id()),
        c -> kind(c) == InstrumentKind.CARBIDE,
        "On composite, fine carbide was smoother than fine diamond; with the finest it was the other"
            + " way round.",
        "On composite, fine carbide was smoother than fine diamond in a published test.");
  }

  static EvidenceRule sterilisingDullsDiamonds() {
    return new EvidenceRule(
        "test-sterilising-dulls",
        SEEN,
        List.of(key("gonzaga-2019"), key("gureckis-1991")),
        c -> diamond(c) && c.candidate().instrument().drawer().sterilisations() >= 5,
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
            cuts(c)
                && c.candidate().instrument().properties().shank() == ShankType.FG
                && diamond(c),
        c -> c.candidate().loadN() <= 0.5,
        "The load is within the 0.2 to 0.5 N suppliers ask for on friction-grip diamonds.",
        "Suppliers ask for 0.2 to 0.5 N on friction-grip diamonds; most dentists use about 1 N.");
  }

  static EvidenceRule slowSpeedOverThePulp() {
    return practice(
        "practice-slow-over-pulp",
        c ->
            material(c).id().equals("carious-dentine")
                || (material(c).id().equals("dentine")
                    && c.candidate().segment().purpose() == Purpose.APPROACH
                    && c.context().cutCase().pulp().protectsPulp()),
        c -> c.candidate().setRpm() <= LOW_SPEED_RPM,
        "Slow speed gives feel over the pulp.",
        "Over the pulp many change to a slow round bur or a hand excavator for the feel of it.");
  }
}
