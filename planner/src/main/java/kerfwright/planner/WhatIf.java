package kerfwright.planner;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kerfwright.physics.heat.column.LayeredColumn;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.heat.CoolSequence;
import kerfwright.planner.heat.HeatInputs;
import kerfwright.planner.heat.PulpWall;
import kerfwright.planner.heat.SequenceHeat;
import kerfwright.planner.heat.WallHistory;
import kerfwright.planner.operation.Work;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.rule.Vetoes;
import kerfwright.planner.sequence.Attempt;
import kerfwright.planner.sequence.CandidateSearch;
import kerfwright.planner.sequence.TimedCut;
import kerfwright.planner.uncertainty.SampledPlan;
import kerfwright.planner.uncertainty.Sampler;
import kerfwright.quantity.FlowRate;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import org.jspecify.annotations.Nullable;

/**
 * A planned sequence that answers what one change would do to it. The rest of the sequence stays as
 * planned, finishing passes with the depth they were planned for; limits and vetoes are looked at
 * again for every step, and the heat of the whole. The heat is the quick column's, moved by what
 * the column lies off the axisymmetric result for the plan itself.
 */
public final class WhatIf {
  private static final double EVERY_S = 0.5;
  private static final int REMEMBERED = 16;
  private static final int MOST_POINTS = 150;

  private final CutCase cutCase;
  private final boolean pulpLives;
  private final List<TimedCut> sequence;
  private final Map<Work, List<Candidate>> others;
  private final PlanOptions options;
  private final double shownPeakK;
  private final WallHistory quick;
  private final SampledPlan before;
  private final Map<Variation, Varied> answers =
      Collections.synchronizedMap(
          new LinkedHashMap<>(REMEMBERED, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<Variation, Varied> eldest) {
              return size() > REMEMBERED;
            }
          });

  WhatIf(
      CutCase cutCase,
      CoolSequence cool,
      Map<Work, List<Candidate>> others,
      boolean pulpLives,
      PlanOptions options) {
    this.cutCase = cutCase;
    this.pulpLives = pulpLives;
    this.sequence = cool.sequence();
    this.others = Map.copyOf(others);
    this.options = options;
    this.shownPeakK = cool.shown().peakK();
    this.quick = quick(cutCase, sequence);
    this.before = sampled(cutCase, sequence);
  }

  public int steps() {
    return sequence.size();
  }

  /** True where the planned cut is dry. */
  public boolean dry() {
    return cutCase.dry();
  }

  /** The steps as planned. */
  List<TimedCut> sequence() {
    return sequence;
  }

  /** Whether a pulp is to live under it. */
  boolean pulpLives() {
    return pulpLives;
  }

  /** What the axisymmetric result lies above the quick column for the plan, K. */
  double aboveQuickK() {
    return shownPeakK - quick.peakK();
  }

  /** What a step does as planned. */
  public Candidate planned(int step) {
    return sequence.get(step - 1).candidate();
  }

  /** The highest speed an instrument may be set to in its handpiece. */
  public static double highestRpm(Candidate c) {
    return CandidateSearch.highestRpm(c);
  }

  /** Every allowed instrument for a step in its cheapest handpiece, cheapest first. */
  public List<Candidate> choices(int step) {
    Map<String, Candidate> byId = new LinkedHashMap<>();
    others.getOrDefault(planned(step).work(), List.of()).stream()
        .sorted(Comparator.comparingDouble(Candidate::costS).thenComparing(Candidate::id))
        .forEach(c -> byId.putIfAbsent(c.id(), c));
    return List.copyOf(byId.values());
  }

  /** What a change would do; the last few answers are remembered, as pages ask again. */
  public Varied ask(Variation change) {
    Varied known = answers.get(change);
    if (known == null) {
      known = answer(change);
      answers.put(change, known);
    }
    return known;
  }

  private Varied answer(Variation change) {
    Varied.Figures was = figures(change.step(), sequence, before, quick);
    CutCase asked = change.waterMlPerMin() == null ? cutCase : wet(change.waterMlPerMin());
    List<TimedCut> changed = new ArrayList<>();
    List<DrawerInstrument> drawer = new ArrayList<>();
    List<Candidate> wanted = new ArrayList<>();
    for (int i = 0; i < sequence.size(); i++) {
      Candidate c = wanted(change, i + 1);
      if (c == null) {
        return new Varied(was, null, notAllowed(change), i + 1);
      }
      wanted.add(c);
      drawer.add(worn(c, change, i + 1));
    }
    CandidateSearch search =
        new CandidateSearch(asked, distinct(drawer), Vetoes.all(), options.pace());
    for (int i = 0; i < sequence.size(); i++) {
      Candidate c = wanted.get(i);
      boolean here = i + 1 == change.step();
      double rpm = here && change.setRpm() != null ? change.setRpm() : c.setRpm();
      double load = here && change.loadN() != null ? change.loadN() : c.loadN();
      Stroke stroke = here && change.stroke() != null ? change.stroke() : c.stroke();
      Exclusion led = CandidateSearch.againstStroke(c.work(), stroke).orElse(null);
      if (led != null) {
        return new Varied(was, null, led, i + 1);
      }
      Attempt attempt = search.at(drawer.get(i), c.handpiece(), c.work(), rpm, load, stroke);
      Candidate done = attempt.candidate();
      if (done == null) {
        return new Varied(was, null, attempt.exclusion(), i + 1);
      }
      changed.add(new TimedCut(done, sequence.get(i).pace()));
    }
    WallHistory heat = quick(asked, changed);
    double peak = heat.peakK() + shownPeakK - quick.peakK();
    if (pulpLives && peak >= WallHistory.LIMIT_K) {
      return new Varied(was, null, tooHot(asked.dry(), peak), 0);
    }
    return new Varied(was, figures(change.step(), changed, sampled(asked, changed), heat), null, 0);
  }

  private @Nullable Candidate wanted(Variation change, int step) {
    Candidate planned = planned(step);
    String other = change.instrument();
    if (step != change.step() || other == null || other.equals(planned.id())) {
      return planned;
    }
    Optional<Candidate> chosen =
        choices(step).stream().filter(c -> c.id().equals(other)).findFirst();
    return chosen.orElse(null);
  }

  private static Exclusion notAllowed(Variation change) {
    return Exclusion.of("not-allowed-here", String.valueOf(change.instrument()));
  }

  private static Exclusion tooHot(boolean dry, double peakK) {
    return dry
        ? new Exclusion("pulp-heat", Message.of("exclusion.pulp-heat-dry"))
        : Exclusion.of("pulp-heat", Rounded.places(peakK, 1));
  }

  private static DrawerInstrument worn(Candidate c, Variation change, int step) {
    DrawerInstrument d = c.instrument().drawer();
    boolean here = step == change.step() && change.moreUses() > 0;
    return here
        ? new DrawerInstrument(
            d.id(), d.properties(), d.uses() + change.moreUses(), d.sterilisations(), d.state())
        : d;
  }

  private static List<DrawerInstrument> distinct(List<DrawerInstrument> drawer) {
    Set<DrawerInstrument> seen = new HashSet<>();
    return drawer.stream().filter(seen::add).toList();
  }

  private CutCase wet(double mlPerMin) {
    return cutCase.with(FlowRate.ofMillilitresPerMinute(mlPerMin));
  }

  private static WallHistory quick(CutCase c, List<TimedCut> sequence) {
    PulpWall wall = SequenceHeat.wall(c);
    return wall.quick(
        new LayeredColumn(), SequenceHeat.cuts(sequence), HeatInputs.TYPICAL, EVERY_S);
  }

  private SampledPlan sampled(CutCase c, List<TimedCut> sequence) {
    double lasts = CoolSequence.lastsS(sequence);
    return new Sampler(c, sequence, options.samples(), lasts, options.pace()).run(options.seed());
  }

  private Varied.Figures figures(
      int step, List<TimedCut> sequence, SampledPlan sampled, WallHistory heat) {
    var spread = sampled.steps().get(step - 1);
    double shift = shownPeakK - before.peakK().typical();
    return new Varied.Figures(
        sequence.get(step - 1).candidate(),
        spread.timeS(),
        sampled.totalTimeS(),
        moved(sampled.peakK(), shift),
        spread.raUm(),
        spread.lives(),
        rise(heat));
  }

  /** Few enough points for a page; the highest one is always among them. */
  private static Varied.Rise rise(WallHistory heat) {
    int every = Math.max(1, heat.timesS().length / MOST_POINTS);
    double peak = heat.peakK();
    List<Double> times = new ArrayList<>();
    List<Double> rises = new ArrayList<>();
    for (int i = 0; i < heat.timesS().length; i++) {
      if (i % every == 0 || heat.riseK()[i] == peak) {
        times.add(heat.timesS()[i]);
        rises.add(heat.riseK()[i]);
      }
    }
    return new Varied.Rise(times, rises);
  }

  private static Estimate moved(Estimate e, double by) {
    return new Estimate(
        Math.max(0, e.low() + by), Math.max(0, e.typical() + by), Math.max(0, e.high() + by));
  }
}
