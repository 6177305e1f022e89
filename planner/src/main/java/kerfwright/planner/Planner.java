package kerfwright.planner;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Segment;
import kerfwright.planner.explain.Explanation;
import kerfwright.planner.heat.CoolSequence;
import kerfwright.planner.heat.HeatInputs;
import kerfwright.planner.heat.PulpWall;
import kerfwright.planner.heat.Remedies;
import kerfwright.planner.heat.SequenceHeat;
import kerfwright.planner.heat.WallHistory;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.PulpHeat;
import kerfwright.planner.plan.RunnerUp;
import kerfwright.planner.rule.RuleContext;
import kerfwright.planner.rule.Vetoes;
import kerfwright.planner.sequence.CandidateSearch;
import kerfwright.planner.sequence.Finishing;
import kerfwright.planner.sequence.Found;
import kerfwright.planner.sequence.Pace;
import kerfwright.planner.sequence.Segments;
import kerfwright.planner.sequence.ShortestSequence;
import kerfwright.planner.sequence.TimedCut;
import kerfwright.planner.uncertainty.SampledPlan;
import kerfwright.planner.uncertainty.Sampler;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/**
 * Plans a cut: case and drawer in, {@link CutPlan} out. The same input and seed give the same plan.
 */
public final class Planner {
  private static final double FAR_BEHIND = 2.5;

  private final CutCase cutCase;
  private final PlanOptions options;
  private final List<Finding> findings = new ArrayList<>();
  private final Segments segments;
  private final CandidateSearch search;
  private final Refusals refusals;
  private final Settled settled;
  private final Map<Segment, List<Candidate>> others = new HashMap<>();
  private @Nullable CoolSequence cool;

  private Planner(CutCase cutCase, DrawerSnapshot drawer, PlanOptions options, Settled settled) {
    this.cutCase = cutCase;
    this.options = options;
    this.settled = settled;
    this.segments = Segments.of(cutCase);
    this.search =
        new CandidateSearch(
            cutCase, drawer.instruments(), segments.depthM(), Vetoes.all(), options.pace());
    this.refusals = new Refusals(cutCase, search, segments.depthM());
  }

  /** Plans a case with the drawer as it stands. */
  public static CutPlan plan(CutCase cutCase, DrawerSnapshot drawer, PlanOptions options) {
    return plan(cutCase, drawer, options, Settled.NOTHING);
  }

  /** Plans what remains of a case: the settled steps stand as they are, the rest is chosen. */
  public static CutPlan plan(
      CutCase cutCase, DrawerSnapshot drawer, PlanOptions options, Settled settled) {
    return new Planner(cutCase, drawer, options, settled).run();
  }

  /** A plan that stays open to questions; empty where the case is refused. */
  public static Optional<WhatIf> whatIf(
      CutCase cutCase, DrawerSnapshot drawer, PlanOptions options) {
    Planner planner = new Planner(cutCase, drawer, options, Settled.NOTHING);
    CoolSequence cool = planner.refusalOrNull() == null ? planner.cool : null;
    return cool == null
        ? Optional.empty()
        : Optional.of(
            new WhatIf(cutCase, planner.segments.depthM(), cool, planner.others, options));
  }

  private CutPlan run() {
    Finding refusal = refusalOrNull();
    CoolSequence found = cool;
    return refusal != null || found == null
        ? refused(java.util.Objects.requireNonNull(refusal))
        : assemble(found);
  }

  /** Searches the sequence and cools it. */
  private @Nullable Finding refusalOrNull() {
    findings.addAll(PlanNotes.filledIn(cutCase, segments));
    if (segments.cuts().isEmpty()) {
      return Finding.refuse("nothing-to-cut", Message.of("finding.nothing-to-cut"));
    }
    Optional<Finding> tooDeep = PulpDistance.refusal(cutCase, segments);
    if (tooDeep.isPresent()) {
      return tooDeep.get();
    }
    List<Found> stretches = new ArrayList<>();
    for (Segment segment : segments.cuts()) {
      Found found = settle(search.on(segment), stretches.size());
      if (found.candidates().isEmpty()) {
        return refusals.of(found);
      }
      stretches.add(found);
      others.put(segment, found.candidates());
    }
    return coolOrNull(chosen(stretches));
  }

  /** Leaves what is settled for a stretch; after the settled ones, all but what is out. */
  private Found settle(Found found, int index) {
    Settled.Taken taken = settled.at(index).orElse(null);
    List<Candidate> left =
        found.candidates().stream()
            .filter(c -> taken != null ? is(c, taken) : !settled.out().contains(c.id()))
            .toList();
    return new Found(found.segment(), left, found.out());
  }

  static boolean is(Candidate c, Settled.Taken taken) {
    return c.id().equals(taken.instrument()) && c.handpiece().id().equals(taken.handpiece());
  }

  private List<TimedCut> chosen(List<Found> stretches) {
    Finishing finishing = Finishing.of(cutCase, segments, search, settled.out());
    List<Candidate> path =
        new ArrayList<>(ShortestSequence.of(stretches, finishing::wallsS, finishing::afterwardsS));
    Candidate last = path.get(path.size() - 1);
    finishing.outOfReach(last).ifPresent(findings::add);
    for (Settled.Taken taken : settled.from(path.size())) {
      Optional<Candidate> pass = finishing.pass(last, c -> is(c, taken));
      if (pass.isPresent()) {
        last = pass.get();
        path.add(last);
      }
    }
    path.addAll(finishing.after(last));
    others.putAll(finishing.rivals());
    double flow = cutCase.coolant().millilitresPerMinute();
    List<TimedCut> sequence = new ArrayList<>();
    for (Candidate c : path) {
      sequence.add(new TimedCut(c, Pace.usual(c.segment().purpose(), flow)));
    }
    return sequence;
  }

  private @Nullable Finding coolOrNull(List<TimedCut> planned) {
    PulpWall wall = SequenceHeat.wall(cutCase);
    Remedies remedies = new Remedies(wall, HeatInputs.TYPICAL, search);
    boolean protects = cutCase.pulp().protectsPulp();
    CoolSequence found = CoolSequence.of(wall, remedies, planned, protects, options.quick());
    PlanNotes.remedies(remedies.taken()).ifPresent(findings::add);
    if (protects && found.shown().peakK() >= WallHistory.LIMIT_K) {
      return PlanNotes.tooHot(found, remedies);
    }
    cool = found;
    return null;
  }

  private CutPlan assemble(CoolSequence found) {
    List<TimedCut> sequence = found.sequence();
    double lasts = CoolSequence.lastsS(sequence);
    SampledPlan sampled =
        new Sampler(cutCase, sequence, options.samples(), lasts, options.pace())
            .run(options.seed());
    Explanation explanation = new Explanation(new RuleContext(cutCase));
    List<PlannedStep> steps = new ArrayList<>();
    List<RunnerUp> runnersUp = new ArrayList<>();
    for (int i = 0; i < sequence.size(); i++) {
      Candidate c = sequence.get(i).candidate();
      Candidate next = i + 1 < sequence.size() ? sequence.get(i + 1).candidate() : null;
      Candidate before = i > 0 ? sequence.get(i - 1).candidate() : null;
      List<Candidate> rivals = others.getOrDefault(c.segment(), List.of());
      steps.add(explanation.step(i + 1, sequence.get(i), next, sampled.steps().get(i), rivals));
      explanation.runnerUp(i + 1, c, rivals, before, next).ifPresent(runnersUp::add);
      refusals.farBehind(i + 1, c, FAR_BEHIND).ifPresent(this::addOnce);
    }
    PulpHeat pulp =
        PulpResult.of(found.shown(), sampled, PulpDistance.leftM(cutCase, segments) * 1e3);
    PlanNotes.ownPace(options.pace(), sequence).ifPresent(findings::add);
    findings.addAll(PlanNotes.warnings(cutCase, pulp));
    return new CutPlan(
        cutCase,
        options.seed(),
        options.samples(),
        steps,
        pulp,
        sampled.totalTimeS(),
        runnersUp,
        findings,
        CaseCautions.of(cutCase, steps));
  }

  private void addOnce(Finding finding) {
    if (findings.stream().noneMatch(f -> f.message().equals(finding.message()))) {
      findings.add(finding);
    }
  }

  private CutPlan refused(Finding why) {
    findings.add(0, why);
    return new CutPlan(
        cutCase,
        options.seed(),
        options.samples(),
        List.of(),
        null,
        Estimate.exactly(0),
        List.of(),
        findings,
        CaseCautions.of(cutCase, List.of()));
  }
}
