package kerfwright.planner;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import kerfwright.catalogue.stack.UsualStacks;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.explain.ChairTimes;
import kerfwright.planner.explain.Explanation;
import kerfwright.planner.explain.OperationWords;
import kerfwright.planner.explain.Outside;
import kerfwright.planner.heat.CoolSequence;
import kerfwright.planner.heat.HeatInputs;
import kerfwright.planner.heat.PulpWall;
import kerfwright.planner.heat.Remedies;
import kerfwright.planner.heat.SequenceHeat;
import kerfwright.planner.heat.WallHistory;
import kerfwright.planner.operation.Laying;
import kerfwright.planner.operation.Pace;
import kerfwright.planner.operation.Work;
import kerfwright.planner.plan.Cue;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.DepthFrom;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.PulpHeat;
import kerfwright.planner.plan.RunnerUp;
import kerfwright.planner.plan.Unfilled;
import kerfwright.planner.rule.OrderRules;
import kerfwright.planner.rule.RuleContext;
import kerfwright.planner.rule.Vetoes;
import kerfwright.planner.sequence.CandidateSearch;
import kerfwright.planner.sequence.Found;
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
  private final List<Finding> first = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final Laying laying;
  private final CandidateSearch search;
  private final CandidateSearch open;
  private final Refusals refusals;
  private final FixedSteps fixed;
  private final boolean pulpLives;
  private final Map<Work, List<Candidate>> others = new HashMap<>();
  private final List<Cue> cues = new ArrayList<>();
  private final List<Unfilled> unfilled = new ArrayList<>();
  private @Nullable CoolSequence cool;
  private @Nullable Sampler ahead;

  private Planner(CutCase cutCase, DrawerSnapshot drawer, PlanOptions options, FixedSteps fixed) {
    this.cutCase = cutCase;
    this.options = options;
    this.fixed = fixed;
    this.laying = Operations.laid(cutCase);
    this.pulpLives = PulpDistance.toLive(cutCase, laying.works());
    this.search = new CandidateSearch(cutCase, drawer.instruments(), Vetoes.all(), options.pace());
    this.open =
        new CandidateSearch(cutCase, drawer.instruments(), Vetoes.all(), options.pace(), true);
    this.refusals = new Refusals(cutCase, search);
  }

  /** Plans a case with the drawer as it stands. */
  public static CutPlan plan(CutCase cutCase, DrawerSnapshot drawer, PlanOptions options) {
    return plan(cutCase, drawer, options, FixedSteps.NOTHING);
  }

  /** Plans what remains of a case: the fixed steps stand as they are, the rest is chosen. */
  public static CutPlan plan(
      CutCase cutCase, DrawerSnapshot drawer, PlanOptions options, FixedSteps fixed) {
    CutPlan plan = new Planner(cutCase, drawer, options, fixed).run();
    return Branching.of(
        plan,
        UsualStacks.packaged().branches(cutCase.restoration(), cutCase.procedure().id()),
        branch -> plan(branch, drawer, options));
  }

  /** A plan that stays open to questions; empty where the case is refused. */
  public static Optional<WhatIf> whatIf(
      CutCase cutCase, DrawerSnapshot drawer, PlanOptions options) {
    Planner planner = new Planner(cutCase, drawer, options, FixedSteps.NOTHING);
    CoolSequence cool = planner.refusalOrNull(likely -> {}) == null ? planner.cool : null;
    return cool == null
        ? Optional.empty()
        : Optional.of(new WhatIf(cutCase, cool, planner.others, planner.pulpLives, options));
  }

  private CutPlan run() {
    Finding refusal = refusalOrNull(this::sampleAhead);
    CoolSequence found = cool;
    return refusal != null || found == null
        ? refused(Objects.requireNonNull(refusal))
        : assemble(found);
  }

  /** Searches the sequence and cools it. */
  private @Nullable Finding refusalOrNull(Consumer<List<TimedCut>> likely) {
    findings.addAll(PlanNotes.filledIn(cutCase));
    findings.addAll(laying.findings());
    if (laying.works().isEmpty()) {
      return Finding.refuse("nothing-to-cut", Message.of("finding.nothing-to-cut"));
    }
    Optional<Finding> tooDeep = PulpDistance.refusal(cutCase, laying.works());
    if (tooDeep.isPresent()) {
      return tooDeep.get();
    }
    List<Found> filled = new ArrayList<>();
    Finding refusal = fill(filled);
    if (refusal != null) {
      return refusal;
    }
    List<Candidate> path = ShortestSequence.of(filled, OrderRules::allow);
    if (path.size() < filled.size()) {
      Message name = OperationWords.name(filled.get(path.size()).work().operation());
      return Finding.refuse("no-order", Message.of("finding.no-order", name));
    }
    return coolOrNull(timed(path), likely);
  }

  /** Finds who can do each operation; what a hand instrument does as well becomes a cue. */
  private @Nullable Finding fill(List<Found> filled) {
    List<Found> searched = laying.works().parallelStream().map(search::on).toList();
    int laid = 0;
    for (Work work : laying.works()) {
      addCues(laid, filled.size());
      Found found = settle(searched.get(laid), filled.size());
      laid++;
      others.put(work, found.candidates());
      if (!found.candidates().isEmpty()) {
        filled.add(found);
        continue;
      }
      List<String> byHand = work.operation().window().otherTools();
      if (!byHand.isEmpty()) {
        cues.add(
            new Cue(
                filled.size(),
                work.operation(),
                byHand.get(0),
                false,
                OperationWords.end(work.operation(), work.saidMm())));
        continue;
      }
      Unfilled missing = refusals.unfilled(work);
      unfilled.add(missing);
      Finding said = refusals.of(found, missing);
      if (missing.essential()) {
        return said;
      }
      findings.add(said);
    }
    addCues(laid, filled.size());
    return filled.isEmpty()
        ? Finding.refuse("nothing-to-cut", Message.of("finding.nothing-to-cut"))
        : null;
  }

  private void addCues(int afterWork, int afterStep) {
    laying.cues().stream()
        .filter(cue -> cue.after() == afterWork)
        .map(
            cue ->
                new Cue(
                    afterStep,
                    cue.operation(),
                    cue.operation().window().otherTools().stream().findFirst().orElse(""),
                    cue.why() == kerfwright.planner.operation.Cue.Why.IF_NEEDED,
                    OperationWords.end(cue.operation(), cue.saidMm())))
        .forEach(cues::add);
  }

  /** Leaves what is fixed for a step; after the fixed ones, all but what is out. */
  private Found settle(Found found, int index) {
    FixedSteps.Taken taken = fixed.at(index).orElse(null);
    List<Candidate> left =
        found.candidates().stream()
            .filter(c -> taken != null ? is(c, taken) : !fixed.out().contains(c.id()))
            .toList();
    return new Found(found.work(), left, found.out());
  }

  static boolean is(Candidate c, FixedSteps.Taken taken) {
    return c.id().equals(taken.instrument()) && c.handpiece().id().equals(taken.handpiece());
  }

  private List<TimedCut> timed(List<Candidate> path) {
    double flow = cutCase.coolant().millilitresPerMinute();
    return path.stream().map(c -> new TimedCut(c, Pace.of(c.work().operation(), flow))).toList();
  }

  private @Nullable Finding coolOrNull(List<TimedCut> planned, Consumer<List<TimedCut>> likely) {
    PulpWall wall = SequenceHeat.wall(cutCase);
    Remedies remedies = new Remedies(wall, HeatInputs.TYPICAL, search);
    // without a pulp to guard the quick column is enough
    boolean quick = options.quick() || !pulpLives;
    CoolSequence found = CoolSequence.of(wall, remedies, planned, pulpLives, quick, likely);
    PlanNotes.remedies(remedies.taken()).ifPresent(findings::add);
    if (pulpLives && found.shown().peakK() >= WallHistory.LIMIT_K) {
      if (ahead != null) {
        ahead.leave();
      }
      return PlanNotes.tooHot(found, remedies, cutCase.dry());
    }
    cool = found;
    return null;
  }

  /** Draws samples of what is likely to be the plan while it is simulated. */
  private void sampleAhead(List<TimedCut> sequence) {
    Sampler begun = ahead;
    if (begun != null && begun.isOf(sequence)) {
      return;
    }
    if (begun != null) {
      begun.leave();
    }
    double lasts = CoolSequence.lastsS(sequence);
    ahead = new Sampler(cutCase, sequence, options.samples(), lasts, options.pace());
    ahead.begin(options.seed());
  }

  private CutPlan assemble(CoolSequence found) {
    List<TimedCut> sequence = found.sequence();
    sampleAhead(sequence);
    SampledPlan sampled = Objects.requireNonNull(ahead).result();
    List<Found> opened =
        sequence.parallelStream().map(cut -> open.on(cut.candidate().work())).toList();
    Explanation explanation = new Explanation(new RuleContext(cutCase));
    List<PlannedStep> steps = new ArrayList<>();
    List<RunnerUp> runnersUp = new ArrayList<>();
    for (int i = 0; i < sequence.size(); i++) {
      Candidate c = sequence.get(i).candidate();
      Candidate next = i + 1 < sequence.size() ? sequence.get(i + 1).candidate() : null;
      Candidate before = i > 0 ? sequence.get(i - 1).candidate() : null;
      List<Candidate> rivals = others.getOrDefault(c.work(), List.of());
      steps.add(
          explanation.step(
              i + 1,
              sequence.get(i),
              before,
              sampled.steps().get(i),
              rivals,
              Outside.of(c, opened.get(i).candidates())));
      explanation.runnerUp(i + 1, c, rivals, before, next).ifPresent(runnersUp::add);
      refusals.lastResort(i + 1, c).ifPresent(first::add);
      refusals.farBehind(i + 1, c, FAR_BEHIND).ifPresent(this::addOnce);
    }
    PulpHeat pulp =
        pulpLives
            ? PulpResult.of(
                found.shown(),
                sampled,
                PulpDistance.leftM(cutCase, PulpDistance.deepestM(laying.works())) * 1e3,
                cutCase.dry())
            : null;
    DepthFrom access = AccessDepth.of(cutCase, laying).orElse(null);
    if (access != null) {
      AccessDepth.filmFirst(cutCase, access).ifPresent(findings::add);
    }
    PlanNotes.ownPace(options.pace(), sequence).ifPresent(findings::add);
    PlanNotes.notSmooth(cutCase, sequence).ifPresent(findings::add);
    findings.addAll(PlanNotes.warnings(cutCase, pulp));
    findings.addAll(0, first);
    return new CutPlan(
        cutCase,
        options.seed(),
        options.samples(),
        steps,
        cues,
        unfilled,
        access,
        pulp,
        RootOfPlan.of(cutCase, laying.works(), sequence).orElse(null),
        ChairTimes.of(sampled, steps, cues),
        List.of(),
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
        List.of(),
        unfilled,
        null,
        null,
        null,
        CutPlan.PlanTimes.NONE,
        List.of(),
        List.of(),
        findings,
        CaseCautions.of(cutCase, List.of()));
  }
}
