package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.material.Materials;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.PartCut;
import kerfwright.planner.operation.Work;
import kerfwright.planner.rule.EvidenceRule;
import kerfwright.planner.rule.EvidenceRules;
import kerfwright.planner.rule.RuleContext;
import kerfwright.planner.rule.Veto;
import kerfwright.planner.rule.Vetoes;
import kerfwright.planner.sequence.CandidateSearch;
import kerfwright.planner.sequence.Found;
import kerfwright.planner.tool.Instrument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every rule once accepting and once refusing: each veto both takes a choice away and lets one
 * pass, each piece of evidence speaks both for and against where it has both to say.
 */
class RuleOutcomesTest {
  private static final Map<String, Set<Boolean>> SPOKEN = new HashMap<>();
  private static final Set<String> REFUSED = new HashSet<>();
  private static final Map<String, Integer> PASSED = new HashMap<>();

  /** Blunt corners, few blades, grit and a disc: where windows would take them out. */
  private static final List<Instrument> OTHERS =
      List.of(
          other(AnInstrument.any("OTHER", InstrumentKind.CARBIDE, null, 4), ShapeFamily.CYLINDER),
          other(
              AnInstrument.any("OTHER", InstrumentKind.DIAMOND, GritClass.FINE, null),
              ShapeFamily.TAPER_ROUND_END),
          other(
              AnInstrument.any("OTHER", InstrumentKind.DISC, GritClass.FINE, null),
              ShapeFamily.DISC));

  @BeforeAll
  static void listenToEveryRule() {
    for (CutCase c : cases()) {
      listen(c);
    }
  }

  private static Instrument other(AnInstrument an, ShapeFamily shape) {
    InstrumentProperties p = an.build().properties();
    InstrumentProperties shaped =
        new InstrumentProperties(
            p.kind(),
            null,
            null,
            shape,
            shape.label(),
            p.grit(),
            p.blades(),
            false,
            p.headDiameter(),
            p.headLength(),
            p.shank(),
            p.overallLength(),
            p.maximumSpeed(),
            List.of());
    return Objects.requireNonNull(
        Instrument.of(new DrawerInstrument("OTHER", shaped, 0, 0, DrawerInstrument.State.CLEAN)));
  }

  private static List<CutCase> cases() {
    List<CutCase> all = new ArrayList<>();
    for (String material :
        List.of(
            "enamel",
            "feldspathic-porcelain",
            "zirconia-3y",
            "composite",
            "co-cr-alloy",
            "ni-cr-alloy")) {
      all.add(
          ACase.of(Procedure.ACCESS_CAVITY)
              .layer(material, 1.2)
              .layer("dentine", 3)
              .keep("dentine", 0.5)
              .handpieces("turbine", "electric-1to5", "electric-1to1")
              .build());
    }
    all.add(
        ACase.of(Procedure.CAVITY_PREPARATION)
            .layer("carious-dentine", 1)
            .layer("dentine", 3)
            .keep("dentine", 0.1)
            .pulp(kerfwright.planner.casework.PulpState.NON_VITAL)
            .build());
    all.add(
        ACase.of(Procedure.CAVITY_PREPARATION)
            .layer("carious-dentine", 1)
            .layer("dentine", 3)
            .keep("dentine", 2.8)
            .build());
    all.add(
        ACase.of(Procedure.CROWN_PREPARATION)
            .layer("enamel", 1)
            .layer("dentine", 3)
            .keep("dentine", 1)
            .outline(Outline.Shape.BAND, 20, 5)
            .build());
    all.add(
        ACase.of(Procedure.ADHESIVE_CLEAN_UP)
            .layer("adhesive-resin-aged", 0.3)
            .layer("enamel", 1)
            .keepAll("enamel")
            .outline(Outline.Shape.PATCH, 4, 3)
            .build());
    all.add(
        ACase.of(Procedure.CROWN_SECTIONING)
            .layer("zirconia-3y", 1)
            .layer("dentine", 2)
            .keepAll("dentine")
            .water(0)
            .build());
    all.add(
        ACase.of(Procedure.ACCESS_CAVITY)
            .layer("enamel", 1)
            .layer("dentine", 3)
            .keep("dentine", 0.5)
            .water(0)
            .build());
    all.add(
        ACase.of(Procedure.OCCLUSAL_ADJUSTMENT)
            .layer("enamel", 1)
            .layer("dentine", 2)
            .outline(Outline.Shape.PATCH, 3, 2)
            .build());
    all.add(
        ACase.of(Procedure.FINISH_COMPOSITE)
            .layer("composite", 2)
            .layer("dentine", 2)
            .outline(Outline.Shape.PATCH, 5, 4)
            .build());
    all.add(
        ACase.of(Procedure.FINISH_CERAMIC)
            .layer("feldspathic-porcelain", 2)
            .layer("dentine", 2)
            .outline(Outline.Shape.PATCH, 5, 4)
            .build());
    return all;
  }

  private static List<DrawerInstrument> drawer() {
    List<DrawerInstrument> all = new ArrayList<>(DemoDrawer.full().instruments());
    all.add(
        new DrawerInstrument(
            "OLD",
            AnInstrument.any("OLD", InstrumentKind.DIAMOND, GritClass.COARSE, null)
                .build()
                .properties(),
            1,
            8,
            DrawerInstrument.State.CLEAN));
    all.add(AnInstrument.carbide(30));
    all.add(AnInstrument.carbide(4));
    return all;
  }

  private static void listen(CutCase c) {
    RuleContext context = new RuleContext(c);
    CandidateSearch search = new CandidateSearch(c, drawer(), Vetoes.all(), OwnPace.NONE);
    CandidateSearch free = new CandidateSearch(c, drawer(), List.of(), OwnPace.NONE, true);
    for (Work work : Operations.laid(c).works()) {
      Found found = search.on(work);
      found.out().values().forEach(e -> REFUSED.add(e.code()));
      for (Candidate candidate : found.candidates()) {
        for (Veto veto : Vetoes.all()) {
          assertTrue(veto.against(candidate, context).isEmpty(), "a vetoed choice got through");
          PASSED.merge(veto.code(), 1, Integer::sum);
        }
      }
      for (Candidate candidate : free.on(work).candidates()) {
        hear(candidate, context);
        for (Instrument other : OTHERS) {
          hear(with(candidate, other, candidate.parts(), candidate.slipM()), context);
        }
        List<PartCut> zirconia =
            candidate.parts().stream().map(RuleOutcomesTest::ofZirconia).toList();
        hear(with(candidate, candidate.instrument(), zirconia, candidate.slipM()), context);
        hear(with(candidate, candidate.instrument(), candidate.parts(), 1e-3), context);
      }
    }
  }

  private static void hear(Candidate candidate, RuleContext context) {
    for (Veto veto : Vetoes.all()) {
      veto.against(candidate, context).ifPresent(e -> REFUSED.add(e.code()));
    }
    for (EvidenceRule rule : EvidenceRules.all()) {
      rule.on(candidate, context)
          .ifPresent(
              r -> SPOKEN.computeIfAbsent(rule.code(), k -> new HashSet<>()).add(r.supports()));
    }
  }

  private static PartCut ofZirconia(PartCut part) {
    return new PartCut(
        part.layer(),
        Materials.packaged().get("zirconia-3y"),
        part.volumeM3(),
        part.cut(),
        part.lives());
  }

  /**
   * Choices that no window lets through, made by hand: vetoes and evidence must hold by themselves.
   */
  private static Candidate with(
      Candidate c, Instrument instrument, List<PartCut> parts, double slipM) {
    return new Candidate(
        instrument,
        c.handpiece(),
        c.work(),
        c.setRpm(),
        c.loadN(),
        c.stroke(),
        c.underLoadRpm(),
        c.rimMPerS(),
        c.contact(),
        parts,
        c.lives(),
        c.raM(),
        c.damageM(),
        slipM,
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

  static Stream<Veto> vetoes() {
    return Vetoes.all().stream();
  }

  @ParameterizedTest
  @MethodSource("vetoes")
  void eachVetoAcceptsAndRefuses(Veto veto) {
    assertTrue(REFUSED.contains(veto.code()), veto.code() + " never refused; seen " + REFUSED);
    assertTrue(PASSED.getOrDefault(veto.code(), 0) > 0, veto.code() + " never let one pass");
  }

  static Stream<EvidenceRule> evidence() {
    return EvidenceRules.all().stream();
  }

  @ParameterizedTest
  @MethodSource("evidence")
  void eachPieceOfEvidenceSpeaksForAndAgainst(EvidenceRule rule) {
    Set<Boolean> said = SPOKEN.getOrDefault(rule.code(), Set.of());
    if (rule.speaks() != EvidenceRule.Speaks.AGAINST) {
      assertTrue(said.contains(true), rule.code() + " never spoke for");
    }
    if (rule.speaks() != EvidenceRule.Speaks.FOR) {
      assertTrue(said.contains(false), rule.code() + " never spoke against");
    }
  }

  @Test
  void evidenceIsSilentWhereItHasNothingToSay() {
    CutCase gold =
        ACase.of(Procedure.ACCESS_CAVITY).layer("gold-alloy", 1).layer("dentine", 3).build();
    CandidateSearch search = new CandidateSearch(gold, drawer(), List.of(), OwnPace.NONE, true);
    Candidate c = search.on(Operations.laid(gold).works().get(0)).candidates().get(0);
    EvidenceRule zirconia =
        EvidenceRules.all().stream()
            .filter(r -> r.code().equals("test-zirconia-speed"))
            .findFirst()
            .orElseThrow();
    assertFalse(zirconia.on(c, new RuleContext(gold)).isPresent());
  }
}
