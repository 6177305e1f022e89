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
  private final Map<Segment, List<Candidate>> others = new HashMap<>();

  private Planner(CutCase cutCase, DrawerSnapshot drawer, PlanOptions options) {
    this.cutCase = cutCase;
    this.options = options;
    this.segments = Segments.of(cutCase);
    this.search =
        new CandidateSearch(cutCase, drawer.instruments(), segments.depthM(), Vetoes.all());
    this.refusals = new Refusals(cutCase, search, segments.depthM());
  }

  /** Plans a case with the drawer as it stands. */
  public static CutPlan plan(CutCase cutCase, DrawerSnapshot drawer, PlanOptions options) {
    return new Planner(cutCase, drawer, options).run();
  }

  private CutPlan run() {
    findings.addAll(PlanNotes.filledIn(cutCase, segments));
    if (segments.cuts().isEmpty()) {
      return refused(
          Finding.refuse(
              "nothing-to-cut",
              "Nothing is left to cut: what must be kept reaches the surface. Check keep and layers."));
    }
    Optional<Finding> tooDeep = PulpDistance.refusal(cutCase, segments);
    if (tooDeep.isPresent()) {
      return refused(tooDeep.get());
    }
    List<Found> stretches = new ArrayList<>();
    for (Segment segment : segments.cuts()) {
      Found found = search.on(segment);
      if (found.candidates().isEmpty()) {
        return refused(refusals.of(found));
      }
      stretches.add(found);
      others.put(segment, found.candidates());
    }
    return plan(chosen(stretches));
  }

  private List<TimedCut> chosen(List<Found> stretches) {
    Finishing finishing = Finishing.of(cutCase, segments, search);
    List<Candidate> path =
        new ArrayList<>(ShortestSequence.of(stretches, finishing::wallsS, finishing::afterwardsS));
    Candidate last = path.get(path.size() - 1);
    finishing.outOfReach(last).ifPresent(findings::add);
    path.addAll(finishing.after(last));
    others.putAll(finishing.rivals());
    double flow = cutCase.coolant().millilitresPerMinute();
    List<TimedCut> sequence = new ArrayList<>();
    for (Candidate c : path) {
      sequence.add(new TimedCut(c, Pace.usual(c.segment().purpose(), flow)));
    }
    return sequence;
  }

  private CutPlan plan(List<TimedCut> planned) {
    PulpWall wall = SequenceHeat.wall(cutCase);
    Remedies remedies = new Remedies(wall, HeatInputs.TYPICAL, search);
    boolean protects = cutCase.pulp().protectsPulp();
    CoolSequence cool = CoolSequence.of(wall, remedies, planned, protects);
    PlanNotes.remedies(remedies.taken()).ifPresent(findings::add);
    if (protects && cool.shown().peakK() >= WallHistory.LIMIT_K) {
      return refused(PlanNotes.tooHot(cool, remedies));
    }
    List<TimedCut> sequence = cool.sequence();
    WallHistory shown = cool.shown();
    double lasts = CoolSequence.lastsS(sequence);
    SampledPlan sampled =
        new Sampler(cutCase, sequence, options.samples(), lasts).run(options.seed());
    return assemble(sequence, shown, sampled);
  }

  private CutPlan assemble(List<TimedCut> sequence, WallHistory shown, SampledPlan sampled) {
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
    PulpHeat pulp = PulpResult.of(shown, sampled, PulpDistance.leftM(cutCase, segments) * 1e3);
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
    if (findings.stream().noneMatch(f -> f.text().equals(finding.text()))) {
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
