package kerfwright.app.learner;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.plan.Figures;
import kerfwright.app.plan.Words;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.planner.Consequence;
import kerfwright.planner.WhatHappens;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.explain.OperationWords;
import kerfwright.planner.plan.Estimate;
import kerfwright.planner.plan.PulpBand;
import kerfwright.quantity.Finding;
import org.jspecify.annotations.Nullable;

/** What choices came to, in words: step by step beside the plan, and the heat of all. */
public record ChoiceView(Say say, Consequence all) {
  /** One figure beside the plan's. */
  public record Row(String name, String planned, String own, boolean worse) {}

  /** How a step stands: left, right, broken or dear. */
  public String verdict(Consequence.Step step) {
    if (step.choice() == null) {
      return "left";
    }
    return step.right() ? "right" : step.broken().isEmpty() ? "dear" : "broken";
  }

  /** What the step does. */
  public String name(Candidate planned) {
    return say.of(OperationWords.name(planned.work().operation()));
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
  public String tried(Consequence.Step step) {
    var choice = step.choice();
    return choice == null
        ? ""
        : choice.instrument() + " \u00b7 " + Figures.rpm(say, choice.setRpm());
  }

  /** A rule that is broken, with the instrument as its subject. */
  public String reason(Consequence.Step step, Finding no) {
    var choice = step.choice();
    String subject = choice == null ? step.planned().id() : choice.instrument();
    return subject + " " + say.of(no.message());
  }

  /** Time, what it leaves, what it costs. */
  public List<Row> rows(Consequence.Step step) {
    Candidate planned = step.planned();
    Candidate own = step.done();
    List<Row> rows = new ArrayList<>();
    if (own == null) {
      return rows;
    }
    rows.add(row("time", planned.cutS() + planned.pauseS(), own.cutS() + own.pauseS(), this::time));
    rows.add(row("rate", -rate(planned), -rate(own), v -> figure(-v, "mm\u00b3/min")));
    rows.add(row("power", planned.cut().powerW(), own.cut().powerW(), v -> figure(v, "W")));
    rows.add(row("ra", planned.raM() * 1e6, own.raM() * 1e6, v -> figure(v, "\u00b5m")));
    rows.add(
        row("damage", planned.damageM() * 1e6, own.damageM() * 1e6, v -> figure(v, "\u00b5m")));
    if (planned.slipM() > 0 || own.slipM() > 0) {
      boolean kept = planned.work().wholeBelow();
      rows.add(
          row(
              kept ? "slip-kept" : "slip",
              planned.slipM() * 1e6,
              own.slipM() * 1e6,
              v -> figure(v, "\u00b5m")));
    }
    rows.add(row("life", planned.lives() * 100, own.lives() * 100, v -> figure(v, "%")));
    rows.add(row("cost", planned.costS(), own.costS(), this::time));
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

  private static Row row(
      String name, double planned, double own, java.util.function.DoubleFunction<String> words) {
    boolean worse = own > planned + Math.abs(planned) * 0.05 + 1e-9;
    return new Row("learner.row-" + name, words.apply(planned), words.apply(own), worse);
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
