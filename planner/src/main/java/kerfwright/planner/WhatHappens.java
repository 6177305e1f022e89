package kerfwright.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerfwright.catalogue.Provenance;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.choice.LastResort;
import kerfwright.planner.heat.HeatInputs;
import kerfwright.planner.heat.HeatParameter;
import kerfwright.planner.heat.PulpWall;
import kerfwright.planner.heat.SequenceHeat;
import kerfwright.planner.heat.WallHistory;
import kerfwright.planner.operation.Pace;
import kerfwright.planner.operation.Work;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.rule.OrderRules;
import kerfwright.planner.rule.RuleContext;
import kerfwright.planner.rule.Veto;
import kerfwright.planner.rule.Vetoes;
import kerfwright.planner.rule.Windows;
import kerfwright.planner.sequence.Attempt;
import kerfwright.planner.sequence.CandidateSearch;
import kerfwright.planner.sequence.TimedCut;
import kerfwright.quantity.Finding;
import kerfwright.quantity.FlowRate;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * What would happen if somebody did the steps of a plan in their own way. A choice that breaks a
 * rule is refused as in any plan, and computed all the same where it can be, so that what it costs
 * is seen beside the plan. The load is the cheapest the operation allows at the speed chosen.
 *
 * <p>The band of the heat takes half and twice the typical share of heat that enters the tooth, see
 * {@link HeatInputs}. A cut in another water than the plan's has its own flow.
 */
public final class WhatHappens {
  /** A choice may cost half as much again as the plan's (project setting). */
  public static final double MARGIN = 1.5;

  /** Or so many seconds more: one change of instrument (project setting). */
  public static final double MARGIN_S = 20;

  private static final double EVERY_S = 0.5;
  private static final double SHARE_OFF = 2;
  private static final SourceKey PULP_LIMIT = new SourceKey("zach-cohen-1965");

  private final CutCase cutCase;
  private final DrawerSnapshot drawer;
  private final PlanOptions options;
  private final WhatIf plan;

  private WhatHappens(CutCase cutCase, DrawerSnapshot drawer, PlanOptions options, WhatIf plan) {
    this.cutCase = cutCase;
    this.drawer = drawer;
    this.options = options;
    this.plan = plan;
  }

  /** Plans a case and stays open to other choices; empty where the case itself is refused. */
  public static Optional<WhatHappens> of(CutCase c, DrawerSnapshot drawer, PlanOptions options) {
    return Planner.whatIf(c, drawer, options)
        .map(plan -> new WhatHappens(c, drawer, options, plan));
  }

  /** What a choice may cost and still be as good as one that costs this, s. */
  public static double most(double plannedCostS) {
    return Math.max(plannedCostS * MARGIN, plannedCostS + MARGIN_S);
  }

  public CutCase cutCase() {
    return cutCase;
  }

  /** What may be chosen from. */
  public List<DrawerInstrument> instruments() {
    return drawer.instruments();
  }

  /** The standing cautions of the case. */
  public List<Finding> cautions() {
    return CaseCautions.of(cutCase, List.of());
  }

  /** The plan's steps, in order. */
  public List<Candidate> planned() {
    return plan.sequence().stream().map(TimedCut::candidate).toList();
  }

  /** What own choices come to; a step without one is done as planned. */
  public Consequence of(Map<Integer, OwnChoice> choices) {
    List<Consequence.Step> steps = new ArrayList<>();
    List<TimedCut> own = new ArrayList<>();
    List<Double> flows = new ArrayList<>();
    double usual = cutCase.coolant().millilitresPerMinute();
    for (int i = 0; i < plan.steps(); i++) {
      TimedCut planned = plan.sequence().get(i);
      OwnChoice choice = choices.get(i + 1);
      Consequence.Step step = step(i + 1, planned.candidate(), choice);
      Candidate done = step.done();
      if (choice == null || done == null) {
        flows.add(usual);
        own.add(planned);
      } else {
        flows.add(choice.waterMlPerMin());
        own.add(new TimedCut(done, Pace.of(done.work().operation(), choice.waterMlPerMin())));
      }
      steps.add(i == 0 ? step : inOrder(steps.get(i - 1), step));
    }
    return new Consequence(steps, plan.pulpLives() ? pulp(own, flows) : null);
  }

  private Consequence.Step step(int order, Candidate planned, @Nullable OwnChoice choice) {
    if (choice == null) {
      return new Consequence.Step(order, planned, null, planned, List.of());
    }
    Work work = planned.work();
    CutCase wet = cutCase.with(FlowRate.ofMillilitresPerMinute(choice.waterMlPerMin()));
    DrawerInstrument instrument =
        drawer.instruments().stream()
            .filter(d -> d.id().equals(choice.instrument()))
            .findFirst()
            .orElse(null);
    Handpiece handpiece =
        cutCase.handpieces().stream()
            .filter(h -> h.id().equals(choice.handpiece()))
            .findFirst()
            .orElse(null);
    if (instrument == null || handpiece == null) {
      Message none = Message.of("exclusion.no-handpiece-here");
      return new Consequence.Step(
          order, planned, choice, null, List.of(refusal("no-handpiece", none, List.of())));
    }
    Attempt allowed =
        new CandidateSearch(wet, List.of(instrument), Vetoes.all(), options.pace())
            .cheapest(instrument, handpiece, work, choice.setRpm(), choice.stroke());
    Candidate done = allowed.candidate();
    if (done == null) {
      done =
          new CandidateSearch(wet, List.of(instrument), List.of(), options.pace(), true)
              .cheapest(instrument, handpiece, work, choice.setRpm(), choice.stroke())
              .candidate();
    }
    List<Finding> broken = new ArrayList<>();
    Exclusion first = allowed.exclusion();
    if (first != null) {
      add(broken, refusal(first.code(), first.message(), standing(first, instrument, work)));
    }
    if (done != null) {
      RuleContext context = new RuleContext(wet);
      for (Veto veto : Vetoes.all()) {
        veto.against(done, context)
            .ifPresent(no -> add(broken, refusal(no.code(), no.message(), veto.sources())));
      }
      LastResort resort = done.resort();
      if (resort != LastResort.NONE && resort != planned.resort()) {
        Message material = Message.of("label.material-" + done.material().id());
        Message says = Message.of("exclusion." + resort.code(), material);
        add(broken, refusal(resort.code(), says, List.of(SourceKey.COMMON_PRACTICE)));
      }
    }
    CandidateSearch.againstStroke(work, choice.stroke())
        .ifPresent(
            no -> add(broken, refusal(no.code(), no.message(), of(work.operation().provenance()))));
    return new Consequence.Step(order, planned, choice, done, broken);
  }

  /** A step may break a rule on what may follow what; the plan itself never does. */
  private static Consequence.Step inOrder(Consequence.Step before, Consequence.Step step) {
    Candidate first = before.done();
    Candidate second = step.done();
    if (first == null || second == null || before.choice() == null && step.choice() == null) {
      return step;
    }
    List<Finding> broken = new ArrayList<>(step.broken());
    OrderRules.all().stream()
        .filter(rule -> !rule.allows().test(first, second))
        .map(rule -> refusal(rule.code(), Exclusion.of(rule.code()).message(), rule.sources()))
        .forEach(no -> add(broken, no));
    return new Consequence.Step(step.order(), step.planned(), step.choice(), step.done(), broken);
  }

  private static List<SourceKey> standing(Exclusion no, DrawerInstrument instrument, Work work) {
    Optional<Veto> veto =
        Vetoes.all().stream().filter(one -> one.code().equals(no.code())).findFirst();
    boolean window =
        Windows.against(instrument.properties(), work, false)
            .filter(one -> one.code().equals(no.code()))
            .isPresent();
    boolean speed = no.code().endsWith("-under-load") || no.code().startsWith("handpiece-not");
    return veto.map(Veto::sources)
        .orElseGet(
            () ->
                window || speed
                    ? of(work.operation().provenance())
                    : List.of(SourceKey.COMMON_PRACTICE));
  }

  private static List<SourceKey> of(Provenance row) {
    return row.sources().isEmpty() ? List.of(SourceKey.COMMON_PRACTICE) : row.sources();
  }

  private static Finding refusal(String code, Message message, List<SourceKey> sources) {
    return new Finding(Finding.Severity.REFUSE, code, message, sources);
  }

  private static void add(List<Finding> broken, Finding no) {
    if (broken.stream().noneMatch(known -> known.code().equals(no.code()))) {
      broken.add(no);
    }
  }

  private Consequence.Pulp pulp(List<TimedCut> own, List<Double> flows) {
    double usual = cutCase.coolant().millilitresPerMinute();
    List<Double> planned = plan.sequence().stream().map(cut -> usual).toList();
    Estimate before = peak(plan.sequence(), planned);
    Estimate after = peak(own, flows);
    boolean dry = flows.stream().anyMatch(flow -> flow < CutCase.DRY_ML_PER_MIN);
    Finding hot = null;
    if (after.typical() >= WallHistory.LIMIT_K) {
      Message says =
          dry
              ? Message.of("exclusion.pulp-heat-dry")
              : Exclusion.of("pulp-heat", Rounded.places(after.typical(), 1)).message();
      hot = refusal("pulp-heat", says, List.of(PULP_LIMIT));
    }
    return new Consequence.Pulp(before, after, WallHistory.LIMIT_K, dry, hot);
  }

  private Estimate peak(List<TimedCut> sequence, List<Double> flows) {
    double typical = peakK(sequence, flows, 1);
    double low = Math.min(typical, peakK(sequence, flows, 1 / SHARE_OFF));
    return new Estimate(low, typical, Math.max(typical, peakK(sequence, flows, SHARE_OFF)));
  }

  private double peakK(List<TimedCut> sequence, List<Double> flows, double share) {
    PulpWall wall = SequenceHeat.wall(cutCase);
    HeatInputs inputs = HeatInputs.drawn(share, 1, HeatParameter::typical);
    WallHistory history =
        wall.quick(new LayeredColumn(), SequenceHeat.cuts(sequence), flows, inputs, EVERY_S);
    return Math.max(0, history.peakK() + plan.aboveQuickK());
  }
}
