package kerfwright.planner.alike;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.Remark;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.InstrumentShape;
import kerfwright.catalogue.instrument.Shapes;
import kerfwright.planner.alike.Difference.Effect;

/** Differences in size, outline, shaft and shank. */
final class Fit {
  /** Air between head and wall a plan asks for. */
  private static final double AIR_MM = 0.05;

  private static final double DIAMETER_PER_MM = 2;
  private static final double LENGTH_PER_MM = 0.12;
  private static final double TORQUE = 0.25;
  private static final double WHIRL = 0.25;
  private static final double STEP = 0.5;
  private static final double OTHER_SHANK = 1;

  private final InstrumentProperties wanted;
  private final Behaviour behaviour;
  private final InstrumentProperties other;
  private final Behaviour its;
  private final List<Difference> found = new ArrayList<>();

  private Fit(InstrumentProperties wanted, Behaviour behaviour, Behaviour its) {
    this.wanted = wanted;
    this.behaviour = behaviour;
    this.other = its.instrument().properties();
    this.its = its;
  }

  static List<Difference> differences(
      InstrumentProperties wanted, Behaviour behaviour, Behaviour its) {
    Fit fit = new Fit(wanted, behaviour, its);
    fit.shank();
    fit.diameter();
    fit.headLength();
    fit.reach();
    fit.outline();
    fit.ends();
    fit.speeds();
    return fit.found;
  }

  private void add(String code, Effect effect, Remark words, double distance) {
    found.add(new Difference(code, effect, words, distance));
  }

  private void shank() {
    if (other.shank() != wanted.shank()) {
      Remark words = Remark.of("alike-shank", other.shank());
      add("shank", Effect.STOPS, words, OTHER_SHANK);
    }
  }

  private void diameter() {
    double mine = wanted.headDiameter().millimetres();
    double apart = other.headDiameter().millimetres() - mine;
    if (Math.abs(apart) < 0.04) {
      return;
    }
    double narrowest = (apart > 0 ? mine : other.headDiameter().millimetres()) + AIR_MM;
    Remark words =
        apart > 0
            ? Remark.of("alike-wider", apart, narrowest)
            : Remark.of("alike-narrower", -apart, narrowest);
    add(
        "diameter",
        apart > 0 ? Effect.STOPS : Effect.CHANGES,
        words,
        DIAMETER_PER_MM * Math.abs(apart));
  }

  private void headLength() {
    double apart = other.headLength().millimetres() - wanted.headLength().millimetres();
    if (Math.abs(apart) >= 0.25) {
      Remark words =
          Remark.of(apart > 0 ? "alike-head-longer" : "alike-head-shorter", Math.abs(apart));
      add("head-length", Effect.CHANGES, words, LENGTH_PER_MM * Math.abs(apart));
    }
  }

  /** Depth in the narrowest opening the wanted one goes into. */
  private void reach() {
    double opening = wanted.headDiameter().metres() + AIR_MM * 1e-3;
    double mine = behaviour.instrument().reachM(opening) * 1e3;
    double apart = its.instrument().reachM(opening) * 1e3 - mine;
    if (Math.abs(apart) >= 0.25) {
      boolean less = apart < 0;
      Remark words =
          Remark.of(less ? "alike-less-deep" : "alike-deeper", Math.abs(apart), opening * 1e3);
      add(
          "reach",
          less ? Effect.STOPS : Effect.CHANGES,
          words,
          (less ? LENGTH_PER_MM : LENGTH_PER_MM / 2) * Math.abs(apart));
    }
  }

  private void outline() {
    double share = OutlineCompared.share(wanted, other);
    add("outline", Effect.CHANGES, share >= 0.03 ? outline(share) : CutCompared.NOTHING, share);
  }

  private Remark outline(double share) {
    return other.shapeName().equals(wanted.shapeName())
        ? Remark.of("alike-outline", Math.round(100 * share))
        : Remark.of("alike-outline-shapes", Math.round(100 * share), shape(other), shape(wanted));
  }

  private static Object shape(InstrumentProperties what) {
    InstrumentShape listed = Shapes.find(what.shapeName()).orElse(null);
    return listed == null ? what.shape() : listed;
  }

  private void ends() {
    if (wanted.shape().cutsAtTip() && !other.shape().cutsAtTip()) {
      add("tip", Effect.STOPS, Remark.of("alike-tip"), STEP);
    }
    if (other.shape().leavesSharpCorner() && !wanted.shape().leavesSharpCorner()) {
      add("corner", Effect.CHANGES, Remark.of("alike-corner"), STEP);
    }
    if (wanted.shape().levelEnd() && !other.shape().levelEnd()) {
      add("floor", Effect.CHANGES, Remark.of("alike-floor"), STEP / 2);
    }
  }

  private void speeds() {
    Ratio torque = Ratio.of(its.torqueNMm(), behaviour.torqueNMm());
    Remark needs =
        torque.noticed()
            ? Remark.of("alike-torque", its.torqueNMm(), behaviour.torqueNMm())
            : CutCompared.NOTHING;
    add("torque", Effect.CHANGES, needs, TORQUE * torque.distance());
    Ratio speed = Ratio.of(Math.max(1, its.rpm()), Math.max(1, behaviour.rpm()));
    if (speed.distance() > Ratio.NOTICED / 2) {
      Remark words = rpm("alike-speed", its.rpm(), behaviour.rpm());
      // what a speed does to the cut is counted there
      add("speed", Effect.CHANGES, words, 0);
    }
    Ratio whirl = Ratio.of(its.whirlRpm(), behaviour.whirlRpm());
    Remark limit =
        whirl.distance() > Ratio.NOTICED / 2
            ? rpm("alike-whirl", its.whirlRpm(), behaviour.whirlRpm())
            : CutCompared.NOTHING;
    double free = its.handpiece().drive().freeSpeed().rpm();
    boolean binds = whirl.value() < 1 && its.whirlRpm() < free;
    Effect effect = binds ? Effect.STOPS : Effect.TOLD;
    add("whirl", effect, limit, WHIRL * whirl.distance());
  }

  private static Remark rpm(String code, double its, double wanted) {
    return Remark.of(code, Math.round(its / 1000) * 1000, Math.round(wanted / 1000) * 1000);
  }
}
