package kerfwright.planner;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import kerfwright.catalogue.material.Material;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.casework.FinishGoal;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Segment;
import kerfwright.planner.explain.Explanation;
import kerfwright.planner.explain.Words;
import kerfwright.planner.heat.HeatInputs;
import kerfwright.planner.heat.PulpWall;
import kerfwright.planner.heat.Remedies;
import kerfwright.planner.heat.SequenceHeat;
import kerfwright.planner.heat.WallHistory;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.HeatCurve;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.PulpHeat;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.RunnerUp;
import kerfwright.planner.rule.RuleContext;
import kerfwright.planner.rule.Vetoes;
import kerfwright.planner.sequence.CandidateSearch;
import kerfwright.planner.sequence.FinishChain;
import kerfwright.planner.sequence.Found;
import kerfwright.planner.sequence.Pace;
import kerfwright.planner.sequence.Segments;
import kerfwright.planner.sequence.ShortestSequence;
import kerfwright.planner.sequence.TimedCut;
import kerfwright.planner.uncertainty.SampledPlan;
import kerfwright.planner.uncertainty.Sampler;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Length;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * Plans a cut: case and drawer in, {@link CutPlan} out. The same input and seed give the same plan.
 */
public final class Planner {
  private static final double FAR_BEHIND = 2.5;
  private static final int REMEDY_ROUNDS = 6;
  private static final double ENOUGH_WATER = 49.9;

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
    noteWhatWasFilledIn();
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
    Length goal = FinishGoal.of(cutCase);
    FinishChain chain = goal == null ? null : new FinishChain(finishers(), goal.metres());
    List<Candidate> path =
        new ArrayList<>(
            ShortestSequence.of(
                stretches,
                c -> chain == null ? 0 : wallsS(chain, c),
                c -> chain == null ? 0 : chain.costS(c)));
    Candidate last = path.get(path.size() - 1);
    if (chain != null && goal != null) {
      if (!chain.reachable(last)) {
        findings.add(unreachable(goal, last));
      }
      chain.after(last).forEach(pass -> path.add(deepened(pass)));
    }
    double flow = cutCase.coolant().millilitresPerMinute();
    List<TimedCut> sequence = new ArrayList<>();
    for (Candidate c : path) {
      sequence.add(new TimedCut(c, Pace.usual(c.segment().purpose(), flow)));
    }
    return sequence;
  }

  /** A dentine wall left rougher than wanted has to be finished too. */
  private double wallsS(FinishChain chain, Candidate c) {
    String id = c.segment().material().id();
    boolean wall =
        cutCase.outline().shape().walled()
            && !c.segment().punch()
            && (id.equals("dentine") || id.equals("carious-dentine"));
    return wall ? chain.costS(c) : 0;
  }

  private static Finding unreachable(Length goal, Candidate last) {
    return Finding.warn(
        "finish-not-reached",
        String.format(
            Locale.ROOT,
            "Ra %.2f um is wanted; the drawer ends at about %.2f um. Add finer finishing diamonds,"
                + " finishing burs or polishers.",
            goal.micrometres(),
            last.raM() * 1e6),
        new SourceKey("yin-2003"));
  }

  /** Candidates for finishing and polishing the floor, worked out for a thin pass. */
  private List<Candidate> finishers() {
    List<Candidate> all = new ArrayList<>();
    for (Purpose purpose : List.of(Purpose.FINISH, Purpose.POLISH)) {
      all.addAll(search.on(finishSegment(purpose, FinishChain.PASS_M)).candidates());
    }
    return all;
  }

  private Segment finishSegment(Purpose purpose, double depthM) {
    Segment last = segments.cuts().get(segments.cuts().size() - 1);
    Layer floor = segments.floor();
    boolean keepsFloor = floor != null && last.wholeBelow();
    Material material = floor != null && keepsFloor ? floor.material() : last.material();
    int layer = keepsFloor ? last.layer() + 1 : last.layer();
    boolean walled = cutCase.outline().shape().walled();
    double height =
        walled ? Math.max(0.3e-3, segments.depthM()) : cutCase.outline().width().metres();
    double area = cutCase.outline().areaM2() + (walled ? wallAreaM2() : 0);
    return new Segment(
        layer,
        material,
        purpose,
        false,
        segments.depthM(),
        segments.depthM() + depthM,
        area,
        height,
        material,
        last.marginM(),
        false);
  }

  private double wallAreaM2() {
    double around =
        2 * 0.85 * (cutCase.outline().length().metres() + cutCase.outline().width().metres());
    return around * segments.depthM();
  }

  private Candidate deepened(FinishChain.Pass pass) {
    Candidate c = pass.candidate();
    Segment real = finishSegment(c.segment().purpose(), pass.depthM());
    others.computeIfAbsent(real, s -> search.on(s).candidates());
    return others.get(real).stream()
        .filter(o -> o.id().equals(c.id()) && o.handpiece().id().equals(c.handpiece().id()))
        .findFirst()
        .orElse(c);
  }

  private CutPlan plan(List<TimedCut> planned) {
    PulpWall wall = SequenceHeat.wall(cutCase);
    Remedies remedies = new Remedies(wall, HeatInputs.TYPICAL, search);
    List<TimedCut> sequence = planned;
    double every = Math.max(0.25, lastsS(planned) / 120);
    WallHistory shown = wall.shown(SequenceHeat.cuts(sequence), HeatInputs.TYPICAL, every);
    if (cutCase.pulp().protectsPulp()) {
      // The quick column guides the search for remedies; the axisymmetric result decides.
      double target = WallHistory.LIMIT_K;
      for (int i = 0; i < REMEDY_ROUNDS && shown.peakK() >= WallHistory.LIMIT_K; i++) {
        double quick = remedies.peakK(sequence);
        target = Math.min(0.9 * target, 0.95 * quick * WallHistory.LIMIT_K / shown.peakK());
        List<TimedCut> cooler = remedies.apply(sequence, target);
        if (cooler.equals(sequence)) {
          break;
        }
        sequence = cooler;
        shown = wall.shown(SequenceHeat.cuts(sequence), HeatInputs.TYPICAL, every);
      }
      noteRemedies(remedies.taken());
      if (shown.peakK() >= WallHistory.LIMIT_K) {
        return refused(tooHot(sequence, shown.peakK(), remedies));
      }
    }
    double lasts = lastsS(sequence);
    SampledPlan sampled =
        new Sampler(cutCase, sequence, options.samples(), lasts).run(options.seed());
    return assemble(sequence, shown, sampled, wall);
  }

  private static double lastsS(List<TimedCut> sequence) {
    double sum = PulpWall.AFTER_S;
    for (var cut : SequenceHeat.cuts(sequence)) {
      sum += cut.changeS() + cut.durationS();
    }
    return sum;
  }

  private CutPlan assemble(
      List<TimedCut> sequence, WallHistory shown, SampledPlan sampled, PulpWall wall) {
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
      refusals.farBehind(c, FAR_BEHIND).ifPresent(this::addOnce);
    }
    PulpHeat pulp = pulp(shown, sampled, PulpDistance.leftM(cutCase, segments) * 1e3);
    warnings(pulp, wall);
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

  private static PulpHeat pulp(WallHistory shown, SampledPlan sampled, double leftMm) {
    // The samples run on the quick column; what it lies off the axisymmetric result shifts the
    // band.
    double shift = shown.peakK() - sampled.peakK().typical();
    Estimate peak = around(shown.peakK(), sampled.peakK(), shift);
    Estimate above = around(shown.secondsAboveLimit(), sampled.secondsAbove(), 0);
    Estimate dose = around(shown.cem43Min(), sampled.cem43Min(), 0);
    return new PulpHeat(
        peak,
        above,
        WallHistory.LIMIT_K,
        dose,
        around(leftMm, sampled.remainingDentineMm(), 0),
        curve(shown, sampled));
  }

  private static Estimate around(double typical, Estimate band, double shift) {
    double low = Math.max(0, Math.min(typical, band.low() + shift));
    return new Estimate(low, typical, Math.max(typical, band.high() + shift));
  }

  private static HeatCurve curve(WallHistory shown, SampledPlan sampled) {
    List<Double> times = new ArrayList<>();
    List<Double> low = new ArrayList<>();
    List<Double> typical = new ArrayList<>();
    List<Double> high = new ArrayList<>();
    for (int i = 0; i < sampled.curveTimesS().length; i++) {
      double rise = shown.at(sampled.curveTimesS()[i]);
      times.add(sampled.curveTimesS()[i]);
      typical.add(rise);
      low.add(Math.min(rise, sampled.curveLowK()[i]));
      high.add(Math.max(rise, sampled.curveHighK()[i]));
    }
    return new HeatCurve(times, low, typical, high);
  }

  private void warnings(PulpHeat pulp, PulpWall wall) {
    if (cutCase.pulp().protectsPulp() && pulp.peakRiseK().high() >= WallHistory.LIMIT_K) {
      findings.add(
          Finding.warn(
              "pulp-heat-uncertain",
              String.format(
                  Locale.ROOT,
                  "The upper end of the estimate reaches %s K at the pulp wall, above the 5.5 K screening"
                      + " limit: lighter, shorter contacts and full water.",
                  Words.figure(pulp.peakRiseK().high())),
              new SourceKey("zach-cohen-1965")));
    }
    double left = pulp.remainingDentineMm().low();
    if (cutCase.pulp().protectsPulp() && left < PulpDistance.LEAST_M * 1e3 && wall.depthMm() > 0) {
      findings.add(
          Finding.warn(
              "remaining-dentine-uncertain",
              String.format(
                  Locale.ROOT,
                  "If the dentine is as thin as it may be, only %.1f mm would remain over the pulp: measure"
                      + " on the radiograph and stop early.",
                  left),
              new SourceKey("murray-2003")));
    }
    if (cutCase.coolant().millilitresPerMinute() < ENOUGH_WATER) {
      findings.add(
          Finding.warn(
              "little-water",
              String.format(
                  Locale.ROOT,
                  "%s mL/min of water is below the usual 50; practices averaged 29, so measure yours.",
                  Words.figure(cutCase.coolant().millilitresPerMinute())),
              new SourceKey("supplier-safety-notes"),
              new SourceKey("cavalcanti-2005")));
    }
    findings.add(
        Finding.note(
            "order-of-magnitude",
            "Removal rates, times, wear and heat are orders of magnitude: 95 percent bands of a factor of"
                + " two for removal and three for the heat entering the tooth are built in, neither is"
                + " measured for your instruments."));
  }

  private void noteRemedies(List<String> taken) {
    if (!taken.isEmpty()) {
      findings.add(
          Finding.note(
              "heat-remedies",
              "To stay below 5.5 K at the pulp wall the plan takes "
                  + String.join(", ", taken)
                  + ".",
              new SourceKey("zach-cohen-1965")));
    }
  }

  private static Finding tooHot(List<TimedCut> sequence, double peakK, Remedies remedies) {
    double withWater = remedies.peakWithWaterK(sequence, 50);
    String water =
        withWater < WallHistory.LIMIT_K
            ? String.format(
                Locale.ROOT, " With 50 mL/min of water it would be %s K.", Words.figure(withWater))
            : " Cut in several visits, or with hand instruments near the pulp.";
    return Finding.refuse(
        "pulp-heat",
        String.format(
                Locale.ROOT,
                "The pulp wall would warm by %s K; 5.5 K is the screening limit and lighter load, lower"
                    + " speed and pauses do not bring it below.",
                Words.figure(peakK))
            + water,
        new SourceKey("zach-cohen-1965"));
  }

  private void noteWhatWasFilledIn() {
    Keep keep = segments.keep();
    if (PulpDistance.filledIn(cutCase, segments) && keep != null) {
      Length least = keep.atLeast();
      findings.add(
          Finding.note(
              "keep-filled-in",
              "The case does not say what must stay; "
                  + (least == null
                      ? "all of the " + keep.materialId() + " is kept."
                      : String.format(
                          Locale.ROOT,
                          "%.2f mm of %s are kept.",
                          least.millimetres(),
                          keep.materialId())),
              SourceKey.COMMON_PRACTICE));
    }
    if (cutCase.stackFilledIn()) {
      findings.add(
          new Finding(
              Finding.Severity.NOTE,
              "usual-stack",
              "The layers were not given: the usual stack for this tooth and restoration is filled in. Check"
                  + " it against the radiograph.",
              cutCase.stackSources()));
    }
  }

  private CutPlan refused(@Nullable Finding why) {
    if (why != null) {
      findings.add(0, why);
    }
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
