package kerfwright.planner.rule;

import static kerfwright.quantity.Basis.COMMON_PRACTICE;

import java.util.List;
import java.util.function.Predicate;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Trait;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.rule.EvidenceRule.Choice;
import kerfwright.planner.rule.EvidenceRule.Speaks;
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
        slowSpeedOverThePulp());
  }

  private static EvidenceRule practice(
      String code, Predicate<Choice> applies, Predicate<Choice> favours, Speaks speaks) {
    return new EvidenceRule(
        code, COMMON_PRACTICE, List.of(SourceKey.COMMON_PRACTICE), applies, favours, speaks);
  }

  static EvidenceRule brittleLayersWantDiamond() {
    return practice(
        "practice-diamond-for-brittle",
        c ->
            c.cuts()
                && (c.material().has(Trait.ENAMEL)
                    || c.material().has(Trait.FILLING) && c.material().has(Trait.RESIN)
                    || c.material().group() == Material.Group.CERAMIC)
                && !c.context().guardsEnamelUnderAdhesive(),
        Choice::diamond,
        Speaks.EITHER);
  }

  static EvidenceRule ductileLayersWantCarbide() {
    return practice(
        "practice-carbide-for-ductile",
        c ->
            c.cuts()
                && (c.material().has(Trait.DENTINE)
                    || c.material().group() == Material.Group.METAL),
        c -> c.kind().bladed(),
        Speaks.EITHER);
  }

  static EvidenceRule sinteredDiamondForZirconia() {
    return practice(
        "practice-sintered-for-zirconia",
        c -> c.cuts() && c.diamond() && c.zirconia(),
        c -> c.kind() == InstrumentKind.SINTERED_DIAMOND,
        Speaks.EITHER);
  }

  static EvidenceRule againstRotationRemovesMost() {
    return practice(
        "practice-against-rotation",
        c -> c.stroke() == Stroke.AGAINST_ROTATION,
        c -> true,
        Speaks.FOR);
  }

  static EvidenceRule withRotationForFinishing() {
    return practice(
        "practice-with-rotation-finish",
        c -> c.stroke() == Stroke.WITH_ROTATION,
        c -> c.purpose() == Purpose.FINISH,
        Speaks.EITHER);
  }

  static EvidenceRule sixToEightBladesForACavity() {
    return practice(
        "practice-cavity-blades",
        c ->
            Procedure.CAVITY_PREPARATION.equals(c.procedure())
                && c.kind() == InstrumentKind.CARBIDE,
        c -> c.blades() >= 6 && c.blades() <= 8,
        Speaks.EITHER);
  }

  static EvidenceRule fewBladesForMetal() {
    return practice(
        "practice-few-blades-metal",
        c ->
            c.cuts()
                && c.material().group() == Material.Group.METAL
                && c.kind() == InstrumentKind.CARBIDE,
        c -> c.blades() <= 8,
        Speaks.EITHER);
  }

  static EvidenceRule manyBladesOnAdhesive() {
    return practice(
        "practice-adhesive-clean-up",
        c -> Procedure.ADHESIVE_CLEAN_UP.equals(c.procedure()) && c.cuts(),
        c -> c.blades() >= 12 || c.kind() == InstrumentKind.POLYMER,
        Speaks.EITHER);
  }

  static EvidenceRule roundedInnerCorners() {
    return practice(
        "practice-rounded-corners",
        c -> Procedure.CAVITY_PREPARATION.equals(c.procedure()) && c.cuts(),
        c -> !c.shape().leavesSharpCorner(),
        Speaks.EITHER);
  }

  static EvidenceRule slowSpeedOverThePulp() {
    return practice(
        "practice-slow-over-pulp",
        c ->
            c.material().has(Trait.CARIOUS)
                || (c.material().has(Trait.DENTINE)
                    && c.purpose() == Purpose.APPROACH
                    && c.context().cutCase().pulp().protectsPulp()),
        c -> c.candidate().setRpm() <= LOW_SPEED_RPM,
        Speaks.EITHER);
  }
}
