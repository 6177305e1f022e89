package kerfwright.planner.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.Remark;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.operation.Operation;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.operation.Work;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.Reason;
import kerfwright.planner.plan.RunnerUp;
import kerfwright.planner.plan.StepOperation;
import kerfwright.planner.plan.StepOperation.LayerCut;
import kerfwright.planner.plan.StepTimes;
import kerfwright.planner.rule.EvidenceRule;
import kerfwright.planner.rule.EvidenceRules;
import kerfwright.planner.rule.RuleContext;
import kerfwright.planner.sequence.Change;
import kerfwright.planner.sequence.TimedCut;
import kerfwright.planner.uncertainty.Against;
import kerfwright.planner.uncertainty.StepSpread;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/** Turns chosen cuts and their spread into steps with reasons, cautions and runners-up. */
public final class Explanation {
  private final RuleContext context;
  private final double coolantMlPerMin;

  /** Explains in the context of a case. */
  public Explanation(RuleContext context) {
    this.context = context;
    this.coolantMlPerMin = context.cutCase().coolant().millilitresPerMinute();
  }

  /** One step, with what the models would have chosen outside the operation's window. */
  public PlannedStep step(
      int order,
      TimedCut cut,
      @Nullable Candidate before,
      StepSpread spread,
      List<Candidate> others,
      Optional<Reason> outside) {
    Candidate c = cut.candidate();
    List<Reason> reasons = reasons(c, others);
    outside.ifPresent(reasons::add);
    return new PlannedStep(
        order,
        c.layer(),
        c.material().id(),
        c.purpose(),
        operation(c),
        c.instrument().drawer(),
        c.handpiece(),
        c.setRpm(),
        spread.underLoadRpm(),
        spread.rimMPerS(),
        around(c.loadN(), spread.loadN()),
        Estimate.exactly(coolantMlPerMin),
        c.stroke(),
        Estimate.exactly(cut.pace().cutS()),
        Estimate.exactly(cut.pace().pauseS()),
        around(c.work().fromM() * 1e3, spread.fromMm()),
        around(c.work().toM() * 1e3, spread.toMm()),
        spread.removalMm3PerMin(),
        spread.powerW(),
        spread.raUm(),
        times(c, before, spread),
        spread.lives(),
        reasons,
        cautions(c, spread),
        c.ownPace());
  }

  private StepOperation operation(Candidate c) {
    Work work = c.work();
    Message end = OperationWords.end(work.operation(), work.saidMm());
    double mm3 = c.volumeM3() * 1e9;
    return new StepOperation(
        work.operation(),
        work.heat(),
        c.lives() > 0.5 ? Message.of("cue.worn", end, Rounded.figure(mm3 / c.lives())) : end,
        OperationWords.stop(work.operation(), work.saidMm()),
        c.parts().stream()
            .map(p -> new LayerCut(p.layer(), p.material().id(), p.volumeM3() * 1e9))
            .toList(),
        work.slotWidthM() > 0 ? work.slotWidthM() * 1e3 : null,
        work.areaM2() * 1e6,
        WhatRemains.under(context.cutCase(), c),
        WhatRemains.overThePulp(context.cutCase(), c));
  }

  private static StepTimes times(Candidate c, @Nullable Candidate before, StepSpread spread) {
    Operation row = c.work().operation();
    boolean changes = before == null || Change.seconds(before, c) > 0;
    return new StepTimes(
        spread.cutS(),
        spread.timeS(),
        ChairTimes.of(row, spread.timeS(), changes),
        row.chairLeastS() != null);
  }

  /** What is planned, with the spread around it. */
  private static Estimate around(double planned, Estimate spread) {
    return new Estimate(Math.min(planned, spread.low()), planned, Math.max(planned, spread.high()));
  }

  private List<Reason> reasons(Candidate c, List<Candidate> others) {
    List<Reason> reasons = new ArrayList<>(ComputedReasons.of(c, others));
    for (EvidenceRule rule : EvidenceRules.all()) {
      rule.on(c, context).ifPresent(reasons::add);
    }
    return reasons;
  }

  private static List<Finding> cautions(Candidate c, StepSpread spread) {
    List<Finding> cautions = new ArrayList<>();
    InstrumentProperties p = c.instrument().properties();
    if (p.maximumSpeed() != null) {
      cautions.add(
          Finding.note(
              "maximum-speed",
              Message.of("finding.maximum-speed", Words.rpm(p.maximumSpeed().rpm())),
              new SourceKey("supplier-safety-notes")));
    }
    if (spread.lives().high() > 1) {
      cautions.add(
          Finding.warn(
              "worn-out-in-step",
              Message.of(
                  "finding.worn-out-in-step",
                  Rounded.figure(spread.lives().low()),
                  Rounded.figure(spread.lives().high())),
              new SourceKey("emir-2018")));
    }
    if (!p.assumed().isEmpty()) {
      cautions.add(
          Finding.note(
              "assumed-dimensions",
              Message.of(
                  "finding.assumed-dimensions",
                  p.assumed().stream().map(Remark::message).toList())));
    }
    return cautions;
  }

  /** The next best other instrument for a step, of another kind or size. */
  public Optional<RunnerUp> runnerUp(
      int order,
      Candidate taken,
      List<Candidate> others,
      @Nullable Candidate before,
      @Nullable Candidate after) {
    // a remedy against heat slows the choice alone: rivals are compared with it as it was before
    Candidate chosen =
        others.stream()
            .filter(
                o -> o.id().equals(taken.id()) && o.handpiece().id().equals(taken.handpiece().id()))
            .findFirst()
            .orElse(taken);
    boolean remedied = chosen.loadN() != taken.loadN() || chosen.setRpm() != taken.setRpm();
    return others.stream()
        .filter(o -> !sameType(o.instrument().properties(), chosen.instrument().properties()))
        .min(
            Comparator.comparingDouble((Candidate o) -> cost(o, before, after))
                .thenComparing(Candidate::id))
        .map(
            o ->
                new RunnerUp(
                    order,
                    o.instrument().drawer(),
                    o.handpiece().id(),
                    Message.of(
                        remedied ? "reason.why-remedied" : "reason.why",
                        why(chosen, o, changes(o, before, after) - changes(chosen, before, after))),
                    cost(o, before, after) / Math.max(1e-9, cost(chosen, before, after)),
                    Against.time(o, chosen)));
  }

  /** Cost of a choice with the changes it brings. */
  private static double cost(Candidate c, @Nullable Candidate before, @Nullable Candidate after) {
    return c.costS()
        + (before == null ? 0 : Change.seconds(before, c))
        + (after == null ? 0 : Change.seconds(c, after));
  }

  private static int changes(Candidate c, @Nullable Candidate before, @Nullable Candidate after) {
    return (before != null && Change.seconds(before, c) > 0 ? 1 : 0)
        + (after != null && Change.seconds(c, after) > 0 ? 1 : 0);
  }

  private static List<Message> why(Candidate chosen, Candidate other, int moreChanges) {
    List<Message> parts = new ArrayList<>();
    parts.add(Message.of("reason.why-time", Words.time(other.cutS()), Words.time(chosen.cutS())));
    if (other.raM() > 1.2 * chosen.raM() || other.raM() < 0.8 * chosen.raM()) {
      parts.add(
          Message.of(
              "reason.why-roughness",
              Rounded.figure(other.raM() * 1e6),
              Rounded.figure(chosen.raM() * 1e6)));
    }
    if (Math.abs(other.lives() - chosen.lives()) > 0.1) {
      parts.add(
          Message.of(
              "reason.why-life", Rounded.percent(other.lives()), Rounded.percent(chosen.lives())));
    }
    if (moreChanges > 0) {
      parts.add(Message.of("reason.why-changes", moreChanges));
    }
    return parts;
  }

  private static boolean sameType(InstrumentProperties a, InstrumentProperties b) {
    return a.kind() == b.kind()
        && a.grit() == b.grit()
        && java.util.Objects.equals(a.blades(), b.blades())
        && a.shape() == b.shape()
        && a.headDiameter().equals(b.headDiameter());
  }
}
