package kerfwright.app.learner;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import kerfwright.app.plan.Figures;
import kerfwright.app.plan.Words;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.planner.Consequence;
import kerfwright.planner.OwnChoice;
import kerfwright.planner.WhatHappens;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.PulpBand;
import org.jspecify.annotations.Nullable;

/** What choices came to, in words: step by step beside the plan, and the heat of all. */
public record ChoiceView(Say say, Consequence all) {
  /** One figure beside the plan's. */
  public record Row(String name, String planned, String own, boolean worse) {}

  /** How a chosen step stands: right, broken or dear. */
  public String verdict(Consequence.Step step) {
    return step.right() ? "right" : step.broken().isEmpty() ? "dear" : "broken";
  }

  /** Layer and depth of a step. */
  public static String where(Say say, Candidate planned) {
    return say.at(
        "learner.step-where",
        Labels.materialWithin(say, planned.material().id()),
        Figures.tenth(say, planned.work().fromM() * 1e3),
        Figures.tenth(say, planned.work().toM() * 1e3));
  }

  /** Instrument, handpiece, speed, load, stroke and water of what is done. */
  public String does(Candidate done, double waterMlPerMin) {
    return String.join(
        " \u00b7 ",
        done.id() + ", " + Words.shortInstrument(say, done.instrument().properties()),
        Labels.handpiece(say, done.handpiece()),
        Figures.rpm(say, done.setRpm()),
        Figures.plain(say, done.loadN()) + "\u00a0N",
        Labels.stroke(say, done.stroke()),
        waterMlPerMin == 0
            ? say.at("plan.dry")
            : Figures.plain(say, waterMlPerMin) + "\u00a0mL/min");
  }

  /** What was chosen where it cannot do the step at all. */
  public String tried(OwnChoice choice) {
    return choice.instrument() + " \u00b7 " + Figures.rpm(say, choice.setRpm());
  }

  /** Time, what it leaves, what it costs. */
  public List<Row> rows(Consequence.Step step) {
    Candidate planned = step.planned();
    Candidate own = step.done();
    List<Row> rows = new ArrayList<>();
    if (own == null) {
      return rows;
    }
    rows.add(row("time", planned, own, c -> c.cutS() + c.pauseS(), this::time));
    rows.add(row("rate", planned, own, c -> -rate(c), v -> figure(-v, "mm\u00b3/min")));
    rows.add(row("power", planned, own, c -> c.cut().powerW(), v -> figure(v, "W")));
    rows.add(row("ra", planned, own, c -> c.raM() * 1e6, v -> figure(v, "\u00b5m")));
    rows.add(row("damage", planned, own, c -> c.damageM() * 1e6, v -> figure(v, "\u00b5m")));
    if (planned.slipM() > 0 || own.slipM() > 0) {
      String slip = planned.work().wholeBelow() ? "slip-kept" : "slip";
      rows.add(row(slip, planned, own, c -> c.slipM() * 1e6, v -> figure(v, "\u00b5m")));
    }
    rows.add(row("life", planned, own, c -> c.lives() * 100, v -> figure(v, "%")));
    rows.add(row("cost", planned, own, Candidate::costS, this::time));
    return rows;
  }

  private static double rate(Candidate c) {
    return c.volumeM3() / Math.max(1e-9, c.cutS()) * 6e10;
  }

  private String time(double seconds) {
    return Figures.seconds(say, Estimate.exactly(seconds));
  }

  private String figure(double value, String unit) {
    return Figures.plain(say, value) + "\u00a0" + unit;
  }

  /** One figure of both; the more of it, the worse. */
  private static Row row(
      String name,
      Candidate planned,
      Candidate own,
      ToDoubleFunction<Candidate> figure,
      DoubleFunction<String> words) {
    double was = figure.applyAsDouble(planned);
    double is = figure.applyAsDouble(own);
    boolean worse = is > was + Math.abs(was) * 0.05 + 1e-9;
    return new Row("learner.row-" + name, words.apply(was), words.apply(is), worse);
  }

  /** The ratio of cost and what may be. */
  public String cost(Consequence.Step step) {
    Candidate done = step.done();
    return done == null
        ? say.at("learner.cannot")
        : say.at(
            "learner.cost",
            Figures.plain(say, step.costRatio()),
            time(WhatHappens.most(step.planned().costS())));
  }

  /** Heat at the pulp wall, in words where a step is cut dry. */
  public String heat() {
    Consequence.@Nullable Pulp pulp = all.pulp();
    if (pulp == null) {
      return say.at("learner.no-heat");
    }
    PulpBand band = pulp.band();
    if (pulp.dry()) {
      return Labels.first(say.at("plan.pulp-dry-" + band.id()))
          + ". "
          + say.at("plan.pulp-in-words");
    }
    return say.at(
        "learner.heat",
        say.at(
            "plan.pulp-" + band.id(),
            Figures.withRange(say, pulp.ownK(), "K"),
            Figures.plain(say, pulp.limitK())),
        Figures.withRange(say, pulp.plannedK(), "K"));
  }
}
