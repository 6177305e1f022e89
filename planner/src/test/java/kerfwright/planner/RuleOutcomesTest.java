package kerfwright.planner;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Segment;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.rule.EvidenceRule;
import kerfwright.planner.rule.EvidenceRules;
import kerfwright.planner.rule.RuleContext;
import kerfwright.planner.rule.Veto;
import kerfwright.planner.rule.Vetoes;
import kerfwright.planner.sequence.CandidateSearch;
import kerfwright.planner.sequence.Found;
import kerfwright.planner.sequence.Segments;
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

  @BeforeAll
  static void listenToEveryRule() {
    for (CutCase c : cases()) {
      listen(c);
    }
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
            .keep("dentine", 2.8)
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
            AnInstrument.any(
                    "OLD",
                    InstrumentKind.DIAMOND,
                    kerfwright.catalogue.instrument.GritClass.COARSE,
                    null)
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
    Segments segments = Segments.of(c);
    CandidateSearch search = new CandidateSearch(c, drawer(), segments.depthM(), Vetoes.all());
    CandidateSearch free = new CandidateSearch(c, drawer(), segments.depthM(), List.of());
    List<Segment> stretches = new ArrayList<>(segments.cuts());
    Segment last = stretches.get(stretches.size() - 1);
    stretches.add(
        new Segment(
            last.layer(),
            last.material(),
            Purpose.FINISH,
            false,
            last.toM(),
            last.toM() + 1e-5,
            last.areaM2(),
            last.engagedM(),
            last.material(),
            last.marginM(),
            false));
    for (Segment segment : stretches) {
      Found found = search.on(segment);
      found.out().values().forEach(e -> REFUSED.add(e.code()));
      for (Candidate candidate : found.candidates()) {
        for (Veto veto : Vetoes.all()) {
          assertTrue(veto.against(candidate, context).isEmpty(), "a vetoed choice got through");
          PASSED.merge(veto.code(), 1, Integer::sum);
        }
      }
      for (Candidate candidate : free.on(segment).candidates()) {
        Candidate heavy = free.again(candidate, candidate.setRpm(), 3);
        if (heavy != null) {
          Vetoes.all()
              .forEach(v -> v.against(heavy, context).ifPresent(e -> REFUSED.add(e.code())));
        }
        for (EvidenceRule rule : EvidenceRules.all()) {
          rule.on(candidate, context)
              .ifPresent(
                  r -> SPOKEN.computeIfAbsent(rule.code(), k -> new HashSet<>()).add(r.supports()));
        }
      }
    }
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
    CandidateSearch search = new CandidateSearch(gold, drawer(), 3e-3, List.of());
    Candidate c = search.on(Segments.of(gold).cuts().get(1)).candidates().get(0);
    EvidenceRule zirconia =
        EvidenceRules.all().stream()
            .filter(r -> r.code().equals("test-zirconia-speed"))
            .findFirst()
            .orElseThrow();
    assertFalse(zirconia.on(c, new RuleContext(gold)).isPresent());
  }
}
