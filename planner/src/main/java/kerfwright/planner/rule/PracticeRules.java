package kerfwright.planner.rule;

import static kerfwright.quantity.Basis.COMMON_PRACTICE;

import java.util.List;
import java.util.function.Predicate;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.material.Material;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.choice.Forms;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.rule.EvidenceRule.Choice;
import kerfwright.quantity.SourceKey;

/** Facts of the trade with no source, each rule in one method named as a sentence. */
final class PracticeRules {
  private static final double LOW_SPEED_RPM = 40_000;

  private PracticeRules() {}

  static List<EvidenceRule> all() {
    return List.of(
        brittleLayersWantDiamond(),
        ductileLayersWantCarbide(),
        sinteredDiamondForZirconia(),
        againstRotationRemovesMost(),
        withRotationForFinishing(),
        sixToEightBladesForACavity(),
        fewBladesForMetal(),
        manyBladesOnAdhesive(),
        roundedInnerCorners(),
        straightSidesForWalls(),
        slowSpeedOverThePulp());
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

  static EvidenceRule brittleLayersWantDiamond() {
    return practice(
        "practice-diamond-for-brittle",
        c ->
            c.cuts()
                && (c.material().id().equals("enamel")
                    || c.material().id().equals("composite")
                    || c.material().group() == Material.Group.CERAMIC)
                && !c.context().guardsEnamelUnderAdhesive(),
        Choice::diamond,
        "Enamel, ceramics and fresh composite are brittle: they are cut with diamond.",
        "Enamel, ceramics and fresh composite are brittle and are usually cut with diamond.");
  }

  static EvidenceRule ductileLayersWantCarbide() {
    return practice(
        "practice-carbide-for-ductile",
        c ->
            c.cuts()
                && (c.material().id().equals("dentine")
                    || c.material().group() == Material.Group.METAL),
        c -> c.kind().bladed(),
        "Dentine and metals are ductile: they are cut with a bladed carbide.",
        "Dentine and metals are ductile and are usually cut with a bladed carbide; diamond clogs.");
  }

  static EvidenceRule sinteredDiamondForZirconia() {
    return practice(
        "practice-sintered-for-zirconia",
        c -> c.cuts() && c.diamond() && c.zirconia(),
        c -> c.kind() == InstrumentKind.SINTERED_DIAMOND,
        "Zirconia wears a single layer of grain quickly; a sintered diamond has grain in reserve.",
        "A sintered diamond, where there is one, lasts longer in zirconia.");
  }

  static EvidenceRule againstRotationRemovesMost() {
    return practice(
        "practice-against-rotation",
        c -> c.stroke() == Stroke.AGAINST_ROTATION,
        c -> true,
        "Led against rotation the wall pushes the handpiece back, so the hand can press: it removes"
            + " most and cannot run away.",
        "");
  }

  static EvidenceRule withRotationForFinishing() {
    return practice(
        "practice-with-rotation-finish",
        c -> c.stroke() == Stroke.WITH_ROTATION,
        c -> c.purpose() == Purpose.FINISH,
        "Finished with rotation in single strokes, lifted back between them, not scrubbed.",
        "With rotation the instrument pulls on and can run away; it removes less.");
  }

  static EvidenceRule sixToEightBladesForACavity() {
    return practice(
        "practice-cavity-blades",
        c -> c.procedure() == Procedure.CAVITY_PREPARATION && c.kind() == InstrumentKind.CARBIDE,
        c -> c.blades() >= 6 && c.blades() <= 8,
        "A 6- to 8-blade carbide makes the first punch and leaves smooth dentine walls.",
        "For a cavity a 6- to 8-blade carbide is usual: fewer blades leave rough walls, more cut"
            + " slowly.");
  }

  static EvidenceRule fewBladesForMetal() {
    return practice(
        "practice-few-blades-metal",
        c ->
            c.cuts()
                && c.material().group() == Material.Group.METAL
                && c.kind() == InstrumentKind.CARBIDE,
        c -> c.blades() <= 8,
        "Few blades with wide flutes take a thick chip: the usual choice for metal.",
        "Metal is usually cut with few blades and wide flutes.");
  }

  static EvidenceRule manyBladesOnAdhesive() {
    return practice(
        "practice-adhesive-clean-up",
        c -> c.procedure() == Procedure.ADHESIVE_CLEAN_UP && c.cuts(),
        c -> c.blades() >= 12 || c.kind() == InstrumentKind.POLYMER,
        "Aged adhesive has taken up water and softened: many blades take it off and spare the enamel;"
            + " never a diamond.",
        "Diamonds and coarse carbides mark the enamel under the adhesive.");
  }

  static EvidenceRule roundedInnerCorners() {
    return practice(
        "practice-rounded-corners",
        c -> c.procedure() == Procedure.CAVITY_PREPARATION && c.cuts(),
        c -> !c.shape().leavesSharpCorner(),
        "A rounded end leaves rounded inner corners, which spare the tooth.",
        "A flat end leaves sharp inner corners.");
  }

  static EvidenceRule straightSidesForWalls() {
    return practice(
        "practice-straight-sides",
        c -> c.cuts() && Forms.straightSided(c.context().cutCase()),
        c -> !Forms.wrongFor(c.context().cutCase(), c.shape()),
        "A straight or tapered side makes an even wall.",
        "Walls and slots are made with a straight or tapered side.");
  }

  static EvidenceRule slowSpeedOverThePulp() {
    return practice(
        "practice-slow-over-pulp",
        c ->
            c.material().id().equals("carious-dentine")
                || (c.material().id().equals("dentine")
                    && c.purpose() == Purpose.APPROACH
                    && c.context().cutCase().pulp().protectsPulp()),
        c -> c.candidate().setRpm() <= LOW_SPEED_RPM,
        "Slow speed gives feel over the pulp.",
        "Over the pulp many change to a slow round bur or a hand excavator for the feel of it.");
  }
}
