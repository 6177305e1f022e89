package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.number.InstrumentResolver;
import kerfwright.physics.cutting.CutResult;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.choice.LastResort;
import kerfwright.planner.operation.Work;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Reason;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.rule.EvidenceRule;
import kerfwright.planner.rule.EvidenceRules;
import kerfwright.planner.rule.OrderRules;
import kerfwright.planner.rule.RuleContext;
import kerfwright.planner.rule.Veto;
import kerfwright.planner.rule.Vetoes;
import kerfwright.planner.sequence.CandidateSearch;
import kerfwright.planner.sequence.Found;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every rule against an instrument it refuses and one it lets pass, or one it speaks for and one it
 * speaks against: {@code rule | case | operation | instrument | handpiece | outcome}. An instrument
 * is kind, shape, grit or blades, head, length, shank, greatest speed, safe end, abrasive and
 * sterilisations.
 */
class RuleTableTest {
  private static final String TABLE =
      """
      kind            | molar   | deepen-dentine  | diamond,round,medium,1.4,1.3,FG,450000         | turbine | allow
      kind            | molar   | approach-roof   | diamond,round,medium,1.4,1.3,FG,450000         | 1to5    | refuse kind-not-for-this
      form            | molar   | deepen-dentine  | carbide,pear,6,1.0,2,FG,450000                 | turbine | refuse form-not-for-this
      grit            | molar   | outline-enamel  | diamond,round,fine,1.2,1.1,FG,450000           | turbine | refuse grit-not-for-this
      grit            | molar   | outline-enamel  | diamond,round,coarse,1.2,1.1,FG,450000         | turbine | allow
      blades          | molar   | deepen-dentine  | carbide,round,12,1.4,1.3,FG,450000             | turbine | refuse blades-not-for-this
      blades          | molar   | deepen-dentine  | carbide,round,6,1.4,1.3,FG,450000              | turbine | allow
      safe end        | molar   | straighten-walls| diamond,taper round end,medium,1.2,8,FG,450000 | 1to5    | refuse end-cuts
      safe end        | molar   | straighten-walls| diamond,taper round end,medium,1.2,8,FG,450000,yes | 1to5 | allow
      tip             | molar   | deepen-dentine  | carbide,taper round end,6,1.2,8,FG,450000,yes  | 1to5    | refuse no-tip
      head            | molar   | outline-enamel  | diamond,round,coarse,1.8,1.7,FG,450000         | turbine | refuse head-too-wide
      head            | molar   | outline-enamel  | diamond,round,coarse,0.8,0.7,FG,450000         | turbine | refuse head-too-small
      handpiece       | molar   | approach-roof   | carbide,round,6,1.4,1.3,FG,450000              | turbine | refuse handpiece-not-for-this
      handpiece       | molar   | approach-roof   | carbide,round,6,1.4,1.3,FG,450000              | 1to5    | allow
      free speed      | molar   | outline-enamel  | diamond,round,coarse,1.2,1.1,FG,300000         | turbine | refuse below-free-speed
      free speed      | molar   | outline-enamel  | diamond,round,coarse,1.2,1.1,FG,300000         | 1to5    | allow
      speed window    | zirconiaSlot | slot-facial| diamond,taper round end,coarse,1.2,6,FG,450000 | turbine | refuse too-fast-under-load
      speed window    | zirconiaSlot | slot-facial| diamond,taper round end,coarse,1.2,6,FG,450000 | 1to5    | allow
      speed window    | zirconiaSlot | slot-facial| diamond,taper round end,coarse,1.2,6,FG,60000  | 1to5    | refuse too-slow-under-load
      slot            | zirconiaSlot | slot-facial| diamond,taper round end,coarse,1.4,6,FG,450000 | 1to5    | resort HEAD_AS_WIDE_AS_SLOT
      slot            | zirconiaSlot | slot-facial| diamond,taper round end,coarse,1.2,6,FG,450000 | 1to5    | resort NONE
      family          | metalCeramic | open-porcelain | carbide,cylinder round end,4,1.2,4,FG,450000 | turbine | resort BLADES_IN_CERAMIC
      family          | metalCeramic | open-porcelain | diamond,round,medium,1.2,1.1,FG,450000     | turbine | resort NONE
      family          | metalCeramic | pierce-metal | diamond,round,coarse,1.2,1.1,FG,450000       | turbine | resort DIAMOND_IN_METAL
      family          | metalCeramic | pierce-metal | carbide,cylinder round end,4,1.2,4,FG,450000 | turbine | resort NONE
      polishes        | finishZirconia | polish-fine | diamond,flame,fine,2,4,RA,15000             | 1to1    | refuse cuts-only
      polishes        | molar   | deepen-dentine  | polisher,cup,fine,5,5,RA,15000                 | 1to1    | refuse polishes-only
      softer          | molar   | outline-enamel  | polymer,round,8,1.4,1.3,RA,10000               | 1to1    | refuse softer-than-the-work
      dry-grinding    | zirconiaDry | slot-facial | diamond,taper round end,coarse,1.2,6,FG,450000 | 1to5    | refuse dry-grinding
      dry fast        | molarDry| outline-enamel  | diamond,round,coarse,1.2,1.1,FG,450000         | turbine | refuse dry-at-high-speed
      dry fast        | deadMolarDry | outline-enamel | diamond,round,coarse,1.2,1.1,FG,450000     | turbine | allow
      kept surface    | adhesive| plane-remnant   | carbide,taper round end,12,1.4,6,RA,40000      | 1to1    | allow
      slip            | veneer  | finish-walls    | diamond,taper round end,fine,1.2,6,FG,450000   | 1to5    | allow
      finisher        | filling | finish-carbide  | carbide,flame,8,1.2,4,FG,300000                | 1to5    | refuse blades-not-for-this
      finisher        | filling | finish-carbide  | carbide,flame,16,1.2,4,FG,300000               | 1to5    | allow
      finisher        | openFilling | finish-carbide | carbide,flame,12,1.2,4,FG,300000            | 1to5    | allow
      finisher        | openFilling | finish-carbide | carbide,flame,40,1.2,4,FG,300000            | 1to5    | allow
      finisher        | openFilling | finish-carbide | carbide,flame,8,1.2,4,FG,300000             | 1to5    | refuse not-a-finisher
      finisher        | openFilling | finish-carbide | diamond,flame,medium,1.2,4,FG,300000        | 1to5    | refuse not-a-finisher
      decay           | decay   | excavate-floor  | carbide,round,6,1.8,1.7,RA,40000               | 1to1    | allow
      decay           | openDecay | excavate-floor | carbide,round,6,1.4,1.3,FG,450000             | turbine | refuse decay-is-cut-slowly
      disc            | openAdjust | finish-extra-fine | disc,disc,super fine,2.2,1,RA,30000        | 1to1    | refuse disc-in-a-hollow
      zirconia        | openZirconia | polish-fine | polisher,cup,fine,5,5,RA,15000,,aluminium-oxide | 1to1   | refuse abrasive-not-for-this
      zirconia        | finishZirconia | polish-fine | polisher,cup,fine,5,5,RA,15000,,diamond     | 1to1    | allow
      zirconia        | openZirconia | smooth-fine-diamond | polisher,flame,fine,2,4,RA,15000,,aluminium-oxide | 1to1 | refuse zirconia-wants-diamond
      zirconia        | openZirconia | smooth-fine-diamond | polisher,flame,fine,2,4,RA,15000,,diamond | 1to1 | refuse too-slow
      zirconia        | openPorcelain | smooth-fine-diamond | polisher,flame,fine,2,4,RA,15000,,aluminium-oxide | 1to1 | allow
      diamond on resin| openAdhesive | plane-remnant | diamond,taper round end,fine,1.4,6,FG,450000 | 1to5   | refuse diamond-on-adhesive
      """;

  /** What no row of a packaged operation comes to is tried below. */
  private static final Set<String> IN_A_TEST_OF_ITS_OWN =
      Set.of(
          "refuse kept-surface-would-be-cut",
          "refuse slip-beyond-margin",
          "refuse too-slow",
          "practice-rounded-corners against",
          "practice-with-rotation-finish against");

  private static final String EVIDENCE =
      """
      practice-diamond-for-brittle    | molar   | outline-enamel | diamond,round,coarse,1.2,1.1,FG,450000        | turbine | for
      practice-diamond-for-brittle    | molar   | outline-enamel | carbide,round,6,1.2,1.1,FG,450000             | turbine | against
      practice-carbide-for-ductile    | molar   | deepen-dentine | carbide,round,6,1.4,1.3,FG,450000             | turbine | for
      practice-carbide-for-ductile    | molar   | deepen-dentine | diamond,round,medium,1.4,1.3,FG,450000        | turbine | against
      practice-sintered-for-zirconia  | zirconiaSlot | slot-facial | sintered-diamond,taper round end,coarse,1.2,6,FG,450000 | 1to5 | for
      practice-sintered-for-zirconia  | zirconiaSlot | slot-facial | diamond,taper round end,coarse,1.2,6,FG,450000 | 1to5 | against
      practice-against-rotation       | molar   | straighten-walls | diamond,taper round end,medium,1.2,8,FG,450000,yes | 1to5 | for
      practice-with-rotation-finish   | filling | finish-carbide | carbide,flame,16,1.2,4,FG,300000              | 1to5    | for
      practice-cavity-blades          | decay   | open-enamel    | carbide,round,6,1.0,0.9,FG,450000             | turbine | for
      practice-cavity-blades          | decay   | open-enamel    | carbide,round,12,1.0,0.9,FG,450000            | turbine | against
      practice-few-blades-metal       | metalCeramic | pierce-metal | carbide,round,6,1.2,1.1,FG,450000          | turbine | for
      practice-few-blades-metal       | metalCeramic | pierce-metal | carbide,round,12,1.2,1.1,FG,450000         | turbine | against
      practice-adhesive-clean-up      | adhesive| plane-remnant  | carbide,taper round end,12,1.4,6,RA,40000     | 1to1    | for
      practice-adhesive-clean-up      | adhesive| plane-remnant  | carbide,taper round end,6,1.4,6,RA,40000      | 1to1    | against
      practice-rounded-corners        | decay   | open-enamel    | carbide,round,6,1.0,0.9,FG,450000             | turbine | for
      practice-slow-over-pulp         | decay   | excavate-floor | carbide,round,6,1.8,1.7,RA,40000              | 1to1    | for
      practice-slow-over-pulp         | openDecay | excavate-floor | carbide,round,6,1.4,1.3,FG,450000           | turbine | against
      test-diamond-on-ni-cr           | nickel  | pierce-metal   | diamond,round,coarse,1.2,1.1,FG,450000        | turbine | for
      test-diamond-on-ni-cr           | nickel  | pierce-metal   | carbide,round,6,1.2,1.1,FG,450000             | turbine | against
      test-carbide-cooler-in-composite| composite | core-out     | carbide,cylinder round end,6,1.2,4,FG,450000  | turbine | for
      test-carbide-cooler-in-composite| composite | core-out     | diamond,cylinder round end,medium,1.2,4,FG,450000 | turbine | against
      test-zirconia-speed             | zirconiaSlot | slot-facial | diamond,taper round end,coarse,1.2,6,FG,100000 | 1to5 | for
      test-zirconia-speed             | zirconiaSlot | slot-facial | diamond,taper round end,coarse,1.2,6,FG,450000 | turbine | against
      test-coarse-grit-zirconia       | zirconiaSlot | slot-facial | diamond,taper round end,coarse,1.2,6,FG,450000 | 1to5 | for
      test-coarse-grit-zirconia       | zirconiaSlot | slot-facial | diamond,taper round end,medium,1.2,6,FG,450000 | 1to5 | against
      test-fine-grit-zirconia         | zirconiaSlot | slot-facial | diamond,taper round end,medium,1.2,6,FG,450000 | 1to5 | for
      test-fine-grit-zirconia         | zirconiaSlot | slot-facial | diamond,taper round end,coarse,1.2,6,FG,450000 | 1to5 | against
      test-carbide-lasts-in-glass     | metalCeramic | open-porcelain | carbide,cylinder round end,6,1.2,4,FG,450000 | turbine | for
      test-carbide-lasts-in-glass     | metalCeramic | open-porcelain | diamond,round,medium,1.2,1.1,FG,450000  | turbine | against
      test-down-cutting-forces        | metalCeramic | open-porcelain | diamond,round,medium,1.2,1.1,FG,450000     | turbine | against
      test-down-cutting-forces        | metalCeramic | open-porcelain | carbide,cylinder round end,6,1.2,4,FG,450000 | turbine | silent
      test-down-cutting-forces        | molar   | outline-enamel | diamond,round,coarse,1.2,1.1,FG,450000        | turbine | silent
      test-down-cutting-forces        | openPorcelain | smooth-fine-diamond | diamond,flame,fine,1.2,4,FG,300000   | 1to5    | silent
      test-stroke-roughness           | openPorcelain | smooth-fine-diamond | diamond,flame,fine,1.2,4,FG,300000   | 1to5    | against
      test-stroke-roughness           | openLeucite | smooth-fine-diamond | diamond,flame,fine,1.2,4,FG,300000   | 1to5    | against
      test-stroke-roughness           | openPorcelain | smooth-fine-diamond | carbide,flame,16,1.2,4,FG,300000     | 1to5    | silent
      test-stroke-roughness           | openZirconia | smooth-fine-diamond | diamond,flame,fine,1.2,4,FG,300000    | 1to5    | silent
      test-stroke-roughness           | metalCeramic | open-porcelain | diamond,round,medium,1.2,1.1,FG,450000     | turbine | silent
      test-sterilising-dulls          | molar   | outline-enamel | diamond,round,coarse,1.2,1.1,FG,450000,,,5    | turbine | against
      test-sterilising-dulls          | molar   | outline-enamel | diamond,round,coarse,1.2,1.1,FG,450000,,,4    | turbine | silent
      test-sterilising-dulls          | molar   | deepen-dentine | carbide,round,6,1.4,1.3,FG,450000,,,9         | turbine | silent
      test-composite-finish           | filling | finish-carbide | carbide,flame,16,1.2,4,FG,300000              | 1to5    | for
      test-composite-finish           | filling | finish-carbide | diamond,flame,fine,1.2,4,FG,300000            | 1to5    | against
      test-margin-finish              | crown   | finish-walls   | diamond,taper round end,fine,1.4,8,FG,300000  | 1to5    | for
      test-margin-finish              | crown   | finish-walls   | carbide,taper round end,16,1.4,8,FG,300000    | 1to5    | against
      makers-light-load               | molar   | straighten-walls | diamond,taper round end,medium,1.2,8,FG,450000,yes | 1to5 | for
      makers-light-load               | molar   | outline-enamel | diamond,round,coarse,1.2,1.1,FG,450000        | turbine | against
      practice-diamond-for-brittle    | molar   | deepen-dentine | carbide,round,6,1.4,1.3,FG,450000             | turbine | silent
      practice-diamond-for-brittle    | metalCeramic | open-porcelain | diamond,round,medium,1.2,1.1,FG,450000   | turbine | for
      practice-diamond-for-brittle    | composite | core-out     | diamond,cylinder round end,medium,1.2,4,FG,450000 | turbine | for
      practice-carbide-for-ductile    | molar   | outline-enamel | carbide,round,6,1.2,1.1,FG,450000             | turbine | silent
      practice-carbide-for-ductile    | metalCeramic | pierce-metal | carbide,round,6,1.2,1.1,FG,450000          | turbine | for
      practice-sintered-for-zirconia  | molar   | outline-enamel | diamond,round,coarse,1.2,1.1,FG,450000        | turbine | silent
      practice-against-rotation       | filling | finish-carbide | carbide,flame,16,1.2,4,FG,300000              | 1to5    | silent
      practice-with-rotation-finish   | molar   | straighten-walls | diamond,taper round end,medium,1.2,8,FG,450000,yes | 1to5 | silent
      practice-cavity-blades          | molar   | deepen-dentine | carbide,round,6,1.4,1.3,FG,450000             | turbine | silent
      practice-cavity-blades          | decay   | open-enamel    | carbide,round,8,1.0,0.9,FG,450000             | turbine | for
      practice-few-blades-metal       | molar   | deepen-dentine | carbide,round,6,1.4,1.3,FG,450000             | turbine | silent
      practice-few-blades-metal       | metalCeramic | pierce-metal | carbide,round,8,1.2,1.1,FG,450000          | turbine | for
      practice-adhesive-clean-up      | filling | finish-carbide | carbide,flame,16,1.2,4,FG,300000              | 1to5    | silent
      practice-rounded-corners        | molar   | deepen-dentine | carbide,round,6,1.4,1.3,FG,450000             | turbine | silent
      practice-slow-over-pulp         | molar   | outline-enamel | diamond,round,coarse,1.2,1.1,FG,450000        | turbine | silent
      practice-slow-over-pulp         | molar   | approach-roof  | carbide,round,6,1.4,1.3,FG,450000             | 1to5    | for
      practice-slow-over-pulp         | deadMolar | approach-roof | carbide,round,6,1.4,1.3,FG,450000            | 1to5    | silent
      test-diamond-on-ni-cr           | metalCeramic | pierce-metal | carbide,round,6,1.2,1.1,FG,450000          | turbine | silent
      test-carbide-cooler-in-composite| molar   | outline-enamel | diamond,round,coarse,1.2,1.1,FG,450000        | turbine | silent
      test-zirconia-speed             | molar   | outline-enamel | diamond,round,coarse,1.2,1.1,FG,450000        | turbine | silent
      test-zirconia-speed             | finishZirconia | polish-fine | polisher,cup,fine,5,5,RA,15000,,diamond    | 1to1    | silent
      test-coarse-grit-zirconia       | molar   | outline-enamel | diamond,round,coarse,1.2,1.1,FG,450000        | turbine | silent
      test-fine-grit-zirconia         | molar   | outline-enamel | diamond,round,coarse,1.2,1.1,FG,450000        | turbine | silent
      test-carbide-lasts-in-glass     | molar   | outline-enamel | diamond,round,coarse,1.2,1.1,FG,450000        | turbine | silent
      test-margin-finish              | filling | finish-carbide | carbide,flame,16,1.2,4,FG,300000              | 1to5    | silent
      test-composite-finish           | crown   | finish-walls   | diamond,taper round end,fine,1.4,8,FG,300000  | 1to5    | silent
      makers-light-load               | molar   | deepen-dentine | carbide,round,6,1.4,1.3,FG,450000             | turbine | silent
      """;

  private static final Map<String, Supplier<ACase>> CASES = new LinkedHashMap<>();

  static {
    CASES.put("molar", RuleTableTest::molar);
    CASES.put("molarDry", () -> molar().water(0));
    CASES.put("deadMolar", () -> molar().pulp(PulpState.NON_VITAL));
    CASES.put("deadMolarDry", () -> molar().water(0).pulp(PulpState.NON_VITAL));
    CASES.put("zirconiaSlot", RuleTableTest::zirconiaSlot);
    CASES.put("zirconiaDry", () -> zirconiaSlot().water(0));
    CASES.put("metalCeramic", () -> crowned("co-cr-alloy"));
    CASES.put("nickel", () -> crowned("ni-cr-alloy"));
    CASES.put("finishZirconia", () -> surface(Procedure.FINISH_CERAMIC, "zirconia-3y"));
    CASES.put("openZirconia", () -> surface(Procedure.FINISH_CERAMIC, "zirconia-3y"));
    CASES.put("openLeucite", () -> surface(Procedure.FINISH_CERAMIC, "leucite-glass-ceramic"));
    CASES.put("openPorcelain", () -> surface(Procedure.FINISH_CERAMIC, "feldspathic-porcelain"));
    CASES.put("filling", () -> surface(Procedure.FINISH_COMPOSITE, "composite"));
    CASES.put("openFilling", () -> surface(Procedure.FINISH_COMPOSITE, "composite"));
    CASES.put("openAdjust", () -> surface(Procedure.OCCLUSAL_ADJUSTMENT, "enamel"));
    CASES.put("adhesive", RuleTableTest::adhesive);
    CASES.put("openAdhesive", RuleTableTest::adhesive);
    CASES.put("decay", RuleTableTest::decay);
    CASES.put("openDecay", RuleTableTest::decay);
    CASES.put("veneer", RuleTableTest::veneer);
    CASES.put("crown", RuleTableTest::crown);
    CASES.put("composite", RuleTableTest::oldFilling);
  }

  private static ACase molar() {
    return ACase.of(Procedure.ACCESS_CAVITY)
        .tooth(46)
        .layer("enamel", 0.98)
        .layer("dentine", 3.42)
        .outline(Outline.Shape.RECTANGLE, 4, 3);
  }

  private static ACase zirconiaSlot() {
    return ACase.of(Procedure.CROWN_SECTIONING)
        .tooth(36)
        .layer("zirconia-3y", 1.0)
        .layer("resin-cement", 0.08)
        .layer("dentine", 2.5)
        .keepAll("dentine")
        .outline(Outline.Shape.SLOT, 11, 1.45);
  }

  private static ACase crowned(String alloy) {
    return ACase.of(Procedure.ACCESS_CAVITY)
        .tooth(26)
        .layer("feldspathic-porcelain", 1.2)
        .layer(alloy, 0.4)
        .layer("zinc-phosphate", 0.1)
        .layer("dentine", 3.4)
        .outline(Outline.Shape.ELLIPSE, 4, 3);
  }

  private static ACase surface(Procedure procedure, String material) {
    return ACase.of(procedure)
        .tooth(16)
        .layer(material, 2)
        .layer("dentine", 2.5)
        .outline(Outline.Shape.PATCH, 5, 4);
  }

  private static ACase adhesive() {
    return ACase.of(Procedure.ADHESIVE_CLEAN_UP)
        .tooth(11)
        .layer("adhesive-resin-aged", 0.3)
        .layer("enamel", 1)
        .layer("dentine", 2.5)
        .keepAll("enamel")
        .outline(Outline.Shape.PATCH, 4, 3);
  }

  private static ACase decay() {
    return ACase.of(Procedure.CAVITY_PREPARATION)
        .tooth(36)
        .layer("enamel", 1)
        .layer("carious-dentine", 1.2)
        .layer("dentine", 2)
        .outline(Outline.Shape.ELLIPSE, 4, 3);
  }

  private static ACase veneer() {
    return ACase.of(Procedure.VENEER_PREPARATION)
        .tooth(11)
        .layer("enamel", 0.9)
        .layer("dentine", 2.5)
        .outline(Outline.Shape.PATCH, 9, 8);
  }

  private static ACase crown() {
    return ACase.of(Procedure.CROWN_PREPARATION)
        .tooth(16)
        .intended("metal-ceramic")
        .layer("enamel", 1.2)
        .layer("dentine", 3.2)
        .outline(Outline.Shape.PATCH, 9, 6);
  }

  private static ACase oldFilling() {
    return ACase.of(Procedure.COMPOSITE_REMOVAL)
        .tooth(36)
        .layer("composite", 2)
        .layer("dentine", 2.5)
        .outline(Outline.Shape.RECTANGLE, 4, 3);
  }

  /** One row of a table. */
  private record Row(
      String rule, String of, String operation, String what, String handpiece, String outcome) {
    CutCase cutCase() {
      String id = handpiece.equals("turbine") ? "turbine" : "electric-" + handpiece;
      return CASES.get(of).get().handpieces(id).build();
    }

    Work work() {
      return Operations.laid(cutCase()).works().stream()
          .filter(w -> w.operation().id().equals(operation))
          .findFirst()
          .orElseThrow(() -> new AssertionError(of + " has no " + operation));
    }

    /** What a search finds; vetoes alone decide where the case's name begins with open. */
    Found found(List<Veto> vetoes, boolean open) {
      return new CandidateSearch(cutCase(), List.of(instrument(what)), vetoes, OwnPace.NONE, open)
          .on(work());
    }

    @Override
    public String toString() {
      return rule + ": " + what + " in " + of + ", " + operation + ", " + outcome;
    }
  }

  private static DrawerInstrument instrument(String text) {
    String[] cells = text.split(",", -1);
    Map<String, String> row = new LinkedHashMap<>();
    row.put("kind", cells[0]);
    row.put("shape", cells[1]);
    row.put(cells[2].matches("\\d+") ? "blades" : "grit", cells[2]);
    row.put("head_mm", cells[3]);
    row.put("head_length_mm", cells[4]);
    row.put("shank", cells[5]);
    row.put("overall_mm", cells[5].equals("FG") ? "19" : "22");
    row.put("max_rpm", cells[6]);
    row.put("safe_end", cells.length > 7 ? cells[7] : "");
    row.put("abrasive", cells.length > 8 ? cells[8] : "");
    return new DrawerInstrument(
        "X",
        InstrumentResolver.resolve(new DrawerFields(row)).orThrow(),
        0,
        cells.length > 9 ? Integer.parseInt(cells[9]) : 0,
        DrawerInstrument.State.CLEAN);
  }

  private static Stream<Row> rows(String table) {
    return table
        .lines()
        .map(line -> line.split("\\|"))
        .map(
            c ->
                new Row(
                    c[0].strip(),
                    c[1].strip(),
                    c[2].strip(),
                    c[3].strip(),
                    c[4].strip(),
                    c[5].strip()));
  }

  static Stream<Row> table() {
    return rows(TABLE);
  }

  static Stream<Row> evidence() {
    return rows(EVIDENCE);
  }

  @ParameterizedTest
  @MethodSource("table")
  void everyRuleDecidesAsTheTableSays(Row row) {
    Found found = row.found(Vetoes.all(), row.of().startsWith("open"));
    String outcome = row.outcome();
    if (outcome.equals("allow")) {
      assertFalse(found.candidates().isEmpty(), found.out().toString());
    } else if (outcome.startsWith("refuse ")) {
      assertTrue(found.candidates().isEmpty(), "allowed");
      assertEquals(outcome.substring(7), found.out().get("X").code());
    } else {
      LastResort resort = LastResort.valueOf(outcome.substring(7));
      assertFalse(found.candidates().isEmpty(), found.out().toString());
      found.candidates().forEach(c -> assertEquals(resort, c.resort()));
    }
  }

  @ParameterizedTest
  @MethodSource("evidence")
  void everyPieceOfEvidenceSpeaksAsTheTableSays(Row row) {
    EvidenceRule rule =
        EvidenceRules.all().stream()
            .filter(r -> r.code().equals(row.rule()))
            .findFirst()
            .orElseThrow();
    List<Boolean> said = new ArrayList<>();
    boolean open = true;
    for (Candidate c : inWindowFirst(row, open)) {
      rule.on(c, new RuleContext(row.cutCase())).map(Reason::supports).ifPresent(said::add);
    }
    if (row.outcome().equals("silent")) {
      assertEquals(List.of(), said);
      assertFalse(inWindowFirst(row, open).isEmpty());
      return;
    }
    boolean supports = row.outcome().equals("for");
    assertTrue(said.contains(supports), row + " said " + said + row.found(List.of(), true).out());
  }

  private static List<Candidate> inWindowFirst(Row row, boolean open) {
    List<Candidate> within = row.found(List.of(), false).candidates();
    return within.isEmpty() ? row.found(List.of(), open).candidates() : within;
  }

  @Test
  void everyRuleStandsInATable() {
    Set<String> there = new HashSet<>(IN_A_TEST_OF_ITS_OWN);
    table().map(Row::outcome).forEach(there::add);
    evidence().forEach(row -> there.add(row.rule() + " " + row.outcome()));
    List<String> wanted = new ArrayList<>();
    Vetoes.all().forEach(veto -> wanted.add("refuse " + veto.code()));
    for (EvidenceRule rule : EvidenceRules.all()) {
      wanted.add(rule.code() + " silent");
      if (rule.speaks() != EvidenceRule.Speaks.AGAINST) {
        wanted.add(rule.code() + " for");
      }
      if (rule.speaks() != EvidenceRule.Speaks.FOR) {
        wanted.add(rule.code() + " against");
      }
    }
    wanted.removeAll(there);
    assertEquals(List.of(), wanted);
  }

  @Test
  void whatNoPackagedOperationComesToIsSpokenAgainst() {
    CutCase metalCeramic = crowned("co-cr-alloy").build();
    String round = "diamond,round,medium,1.2,1.1,FG,450000";
    Candidate bulk = candidates(metalCeramic, work(metalCeramic, "open-porcelain"), round).get(0);
    EvidenceRule stroke = evidence("practice-with-rotation-finish");
    RuleContext context = new RuleContext(metalCeramic);
    assertFalse(stroke.on(led(bulk, Stroke.WITH_ROTATION), context).orElseThrow().supports());
    CutCase crown = crown().build();
    String end = "diamond,taper flat end,fine,1.4,8,FG,300000";
    Candidate flat = candidates(crown, work(crown, "finish-line"), end).get(0);
    RuleContext cavity = new RuleContext(decay().build());
    EvidenceRule corners = evidence("practice-rounded-corners");
    assertFalse(corners.on(flat, cavity).orElseThrow().supports());
  }

  /** Down-cutting is spoken of where there is a direction of cutting: not along the axis. */
  @Test
  void alongTheAxisNothingIsSaidOfTheStroke() {
    EvidenceRule rule = evidence("test-down-cutting-forces");
    CutCase c = crowned("co-cr-alloy").build();
    Candidate one =
        candidates(c, work(c, "open-porcelain"), "diamond,round,medium,1.2,1.1,FG,450000").get(0);
    RuleContext context = new RuleContext(c);
    assertTrue(rule.on(led(one, Stroke.WITH_ROTATION), context).isPresent());
    assertTrue(rule.on(led(one, Stroke.AXIAL), context).isEmpty());
  }

  /** The texts end by the side they speak for. */
  @Test
  void everyRuleIsToldByTheSideItSpeaksFor() {
    for (EvidenceRule rule : EvidenceRules.all()) {
      String side = rule.speaks() == EvidenceRule.Speaks.AGAINST ? "-against" : "-for";
      assertEquals("reason." + rule.code() + side, rule.message().key());
    }
    CutCase c = molar().build();
    Work w = work(c, "outline-enamel");
    for (Candidate one : candidates(c, w, "carbide,round,6,1.2,1.1,FG,450000")) {
      assertEquals(
          "reason.practice-diamond-for-brittle-against",
          evidence("practice-diamond-for-brittle")
              .on(one, new RuleContext(c))
              .orElseThrow()
              .message()
              .key());
    }
  }

  private static double figure(Exclusion told, int place) {
    return Double.parseDouble(told.message().values().get(place).toString());
  }

  @Test
  void aRefusedSizeTellsTheHeadAndWhatFits() {
    CutCase c = molar().build();
    Work w = work(c, "outline-enamel");
    Exclusion wide = refused(c, w, "diamond,round,coarse,1.8,1.7,FG,450000");
    assertEquals(1.8, figure(wide, 0), 1e-9);
    assertEquals(Math.max(w.headMostM(), w.slotWidthM()) * 1e3, figure(wide, 1), 0.06);
    Exclusion small = refused(c, w, "diamond,round,coarse,0.8,0.7,FG,450000");
    assertEquals(0.8, figure(small, 0), 1e-9);
    assertEquals(w.headLeastM() * 1e3, figure(small, 1), 0.06);
  }

  private static Exclusion refused(CutCase c, Work work, String what) {
    return new CandidateSearch(c, List.of(instrument(what)), List.of(), OwnPace.NONE)
        .on(work)
        .out()
        .get("X");
  }

  @Test
  void aStepOfHalfAnHourIsRefusedAndItsMinutesTold() {
    Veto veto = veto("too-slow");
    CutCase c = surface(Procedure.FINISH_CERAMIC, "zirconia-3y").build();
    List<Candidate> all =
        candidates(
            c,
            work(c, "smooth-fine-diamond"),
            "polisher,flame,fine,2,4,RA,15000,,diamond",
            "diamond,flame,fine,1.2,4,FG,300000");
    Set<Boolean> seen = new HashSet<>();
    for (Candidate one : all) {
      Optional<Exclusion> told = veto.against(one, new RuleContext(c));
      seen.add(told.isPresent());
      assertEquals(one.cutS() > 1800, told.isPresent());
      told.ifPresent(e -> assertEquals(one.cutS() / 60, figure(e, 0), 0.6));
    }
    assertEquals(Set.of(true, false), seen);
  }

  /** A finish line is cut no faster than the reduction before it, in rpm. */
  @Test
  void theFinishLineIsCutSlowerThanTheReduction() {
    CutCase c = crown().build();
    String fine = "diamond,taper round end,fine,1.4,8,FG,300000";
    String coarse = "diamond,taper round end,coarse,1.4,8,FG,450000";
    List<Candidate> bulk = candidates(c, work(c, "reduce-occlusal"), coarse);
    List<Candidate> line = candidates(c, work(c, "finish-line"), fine);
    Set<Boolean> seen = new HashSet<>();
    for (Candidate one : bulk) {
      for (Candidate after : line) {
        for (double share : List.of(0.9, 1.0, 1.1)) {
          Candidate before = altered(one, after.setRpm() * share, one.stroke());
          boolean allowed = OrderRules.allow(before, after);
          seen.add(allowed);
          assertEquals(share >= 1, allowed);
        }
      }
    }
    assertEquals(Set.of(true, false), seen);
    // after another finish line, or after what cuts nothing of the bulk, any speed will do
    for (Candidate before : line) {
      line.forEach(after -> assertTrue(OrderRules.allow(before, after)));
    }
  }

  private static Candidate led(Candidate c, Stroke stroke) {
    return altered(c, c.setRpm(), stroke);
  }

  private static Candidate altered(Candidate c, double setRpm, Stroke stroke) {
    return new Candidate(
        c.instrument(),
        c.handpiece(),
        c.work(),
        setRpm,
        c.loadN(),
        stroke,
        c.underLoadRpm(),
        c.rimMPerS(),
        c.contact(),
        c.parts(),
        c.lives(),
        c.raM(),
        c.damageM(),
        c.slipM(),
        c.overlap(),
        c.leastS(),
        c.cutS(),
        c.pauseS(),
        c.riskS(),
        c.wearS(),
        c.ownPace(),
        c.ownWear(),
        c.literatureCutS(),
        c.literaturePauseS(),
        c.resort());
  }

  private static EvidenceRule evidence(String code) {
    return EvidenceRules.all().stream()
        .filter(r -> r.code().equals(code))
        .findFirst()
        .orElseThrow();
  }

  private static Veto veto(String code) {
    return Vetoes.all().stream().filter(v -> v.code().equals(code)).findFirst().orElseThrow();
  }

  /** All an instrument could do there with windows and vetoes off. */
  private static List<Candidate> candidates(CutCase c, Work work, String... what) {
    List<DrawerInstrument> drawer = Stream.of(what).map(RuleTableTest::instrument).toList();
    return new CandidateSearch(c, drawer, List.of(), OwnPace.NONE, true).on(work).candidates();
  }

  @Test
  void aSlipMayUseUpHalfOfWhatIsKeptWhereTheCutComesNear() {
    Veto veto = veto("slip-beyond-margin");
    CutCase c = veneer().build();
    String[] what = {
      "diamond,taper round end,fine,1.2,6,FG,450000",
      "diamond,taper round end,coarse,1.2,6,FG,450000"
    };
    Work near = work(c, "finish-walls");
    double[] slips =
        candidates(c, keeping(near, 1e-3), what).stream()
            .mapToDouble(Candidate::slipM)
            .sorted()
            .toArray();
    double middle = slips[slips.length / 2];
    assertTrue(slips[0] < middle, "all alike");
    Set<Boolean> seen = new HashSet<>();
    for (Candidate one : candidates(c, keeping(near, 2 * middle), what)) {
      boolean refused = veto.against(one, new RuleContext(c)).isPresent();
      seen.add(refused);
      assertEquals(one.slipM() > middle, refused);
      veto.against(one, new RuleContext(c))
          .ifPresent(
              told -> {
                assertEquals(one.slipM() * 1e3, figure(told, 0), 0.006);
                assertEquals(2 * middle * 1e3, figure(told, 1), 0.006);
              });
    }
    assertEquals(Set.of(true, false), seen);
    CutCase bulk = crown().build();
    Work reduce = keeping(work(bulk, "reduce-occlusal"), 1e-9);
    assertEquals(Purpose.BULK, Purpose.of(reduce.operation().task()));
    List<Candidate> far =
        candidates(bulk, reduce, "diamond,taper round end,coarse,1.4,8,FG,450000");
    assertFalse(far.isEmpty());
    far.forEach(one -> assertTrue(veto.against(one, new RuleContext(bulk)).isEmpty()));
  }

  private static Work keeping(Work w, double marginM) {
    return new Work(
        w.order(),
        w.operation(),
        w.parts(),
        w.fromM(),
        w.toM(),
        w.areaM2(),
        w.engagedM(),
        w.pathM(),
        w.slotWidthM(),
        w.headLeastM(),
        w.headMostM(),
        w.reachM(),
        w.below(),
        marginM,
        w.wholeBelow(),
        w.heat(),
        w.saidMm());
  }

  /** Three times faster through the film than through the enamel, and 10 um at most in a slip. */
  @Test
  void whatCutsEnamelAlmostAsFastIsNotForTheAdhesiveOverIt() {
    Veto veto = veto("kept-surface-would-be-cut");
    CutCase c = adhesive().build();
    RuleContext context = new RuleContext(c);
    Set<String> seen = new HashSet<>();
    for (Candidate one :
        candidates(
            c,
            work(c, "plane-remnant"),
            "carbide,taper round end,12,1.4,6,RA,40000",
            "carbide,taper round end,4,1.4,6,FG,450000",
            "diamond,taper round end,coarse,1.4,6,FG,450000",
            "diamond,taper round end,fine,1.4,6,FG,450000")) {
      CutResult enamel = context.onKept(one);
      boolean alike = one.cut().removalM3PerS() < 3 * enamel.removalM3PerS();
      boolean deep = context.slipM(one, enamel) > 10e-6;
      seen.add(alike ? "alike" : deep ? "deep" : "fine");
      Optional<Exclusion> told = veto.against(one, context);
      assertEquals(alike || deep, told.isPresent());
      // what is cut before the hand reacts, over the foot of the contact
      double foot = one.contact().engagedLengthM() * one.contact().diameterM();
      double slip = 0.3 * enamel.removalM3PerS() / foot;
      assertEquals(slip, context.slipM(one, enamel), 1e-12 + 1e-9 * slip);
      told.ifPresent(exclusion -> assertEquals(slip * 1e6, figure(exclusion, 1), 0.6));
    }
    assertTrue(seen.containsAll(Set.of("alike", "fine")), seen.toString());
    CutCase open = oldFilling().build();
    candidates(open, work(open, "core-out"), "diamond,cylinder round end,medium,1.2,4,FG,450000")
        .forEach(o -> assertTrue(veto.against(o, new RuleContext(open)).isEmpty()));
  }

  @Test
  void orderRulesAllowAndForbid() {
    CutCase c = molar().build();
    Work bulk = work(c, "deepen-dentine");
    Work near = work(c, "approach-roof");
    CandidateSearch search =
        new CandidateSearch(
            c, List.of(instrument("carbide,round,6,1.4,1.3,FG,450000")), List.of(), OwnPace.NONE);
    Candidate before = search.on(bulk).candidates().get(0);
    List<Candidate> after = search.on(near).candidates();
    assertTrue(after.stream().anyMatch(a -> OrderRules.allow(before, a)));
    Candidate slow = after.stream().filter(a -> a.setRpm() < 10_000).findFirst().orElseThrow();
    Candidate fast = after.stream().filter(a -> a.setRpm() > 30_000).findFirst().orElseThrow();
    assertFalse(OrderRules.allow(slow, fast), "an approach faster than what came before");
    assertTrue(OrderRules.allow(fast, slow) || slow.loadN() > fast.loadN());
  }

  @Test
  void finishingGoesFromCoarseToFine() {
    CutCase c = surface(Procedure.FINISH_CERAMIC, "zirconia-3y").build();
    CandidateSearch search =
        new CandidateSearch(
            c,
            List.of(
                named("M", "polisher,cup,medium,5,5,RA,15000,,diamond"),
                named("F", "polisher,cup,fine,5,5,RA,15000,,diamond")),
            List.of(),
            OwnPace.NONE,
            true);
    Found coarse = search.on(work(c, "polish-coarse"));
    Candidate m = by(coarse, "M");
    Candidate f = by(search.on(work(c, "polish-fine")), "F");
    assertTrue(OrderRules.allow(m, f));
    assertFalse(OrderRules.allow(by(coarse, "F"), by(search.on(work(c, "polish-fine")), "M")));
    // the same grain again is no coarser; a polisher is not measured by a diamond's grain
    assertTrue(OrderRules.allow(by(coarse, "F"), f));
    Candidate diamond =
        candidates(c, work(c, "smooth-fine-diamond"), "diamond,flame,fine,1.2,4,FG,300000").get(0);
    assertTrue(OrderRules.allow(diamond, m));
  }

  @Test
  void fewerBladesNeverFollowMoreOnOneFace() {
    CutCase c = surface(Procedure.FINISH_COMPOSITE, "composite").build();
    Work w = work(c, "finish-carbide");
    Candidate twelve = candidates(c, w, "carbide,flame,12,1.2,4,FG,300000").get(0);
    Candidate thirty = candidates(c, w, "carbide,flame,30,1.2,4,FG,300000").get(0);
    assertTrue(OrderRules.allow(twelve, thirty));
    assertTrue(OrderRules.allow(twelve, twelve));
    assertFalse(OrderRules.allow(thirty, twelve));
  }

  private static Candidate by(Found found, String id) {
    return found.candidates().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
  }

  private static DrawerInstrument named(String id, String text) {
    DrawerInstrument d = instrument(text);
    return new DrawerInstrument(id, d.properties(), 0, 0, d.state());
  }

  private static Work work(CutCase c, String operation) {
    return Operations.laid(c).works().stream()
        .filter(w -> w.operation().id().equals(operation))
        .findFirst()
        .orElseThrow();
  }
}
