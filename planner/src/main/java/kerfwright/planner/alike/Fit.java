package kerfwright.planner.alike;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kerfwright.catalogue.instrument.InstrumentProperties;
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

  private void add(String code, Effect effect, String text, double distance) {
    found.add(new Difference(code, effect, text, distance));
  }

  private void shank() {
    if (other.shank() != wanted.shank()) {
      String words = "has a " + other.shank().label() + " shank: goes into another handpiece";
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
    String words =
        apart > 0
            ? say("%.1f mm wider: does not fit an opening of %.2f mm", apart, narrowest)
            : say("%.1f mm narrower: goes into openings from %.2f mm", -apart, narrowest);
    add(
        "diameter",
        apart > 0 ? Effect.STOPS : Effect.CHANGES,
        words,
        DIAMETER_PER_MM * Math.abs(apart));
  }

  private void headLength() {
    double apart = other.headLength().millimetres() - wanted.headLength().millimetres();
    if (Math.abs(apart) >= 0.25) {
      String words = say("head %.1f mm %s", Math.abs(apart), apart > 0 ? "longer" : "shorter");
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
      String words =
          say(
              "reaches %.1f mm %s in an opening of %.2f mm",
              Math.abs(apart), less ? "less deep" : "deeper", opening * 1e3);
      add(
          "reach",
          less ? Effect.STOPS : Effect.CHANGES,
          words,
          (less ? LENGTH_PER_MM : LENGTH_PER_MM / 2) * Math.abs(apart));
    }
  }

  private void outline() {
    double share = OutlineCompared.share(wanted, other);
    String words =
        share >= 0.03
            ? say("outline of the head differs by %.0f %% of its area", 100 * share) + shapes()
            : "";
    add("outline", Effect.CHANGES, words, share);
  }

  private String shapes() {
    return other.shapeName().equals(wanted.shapeName())
        ? ""
        : ": " + other.shapeName() + ", not " + wanted.shapeName();
  }

  private void ends() {
    if (wanted.shape().cutsAtTip() && !other.shape().cutsAtTip()) {
      add("tip", Effect.STOPS, "does not cut at its tip", STEP);
    }
    if (other.shape().leavesSharpCorner() && !wanted.shape().leavesSharpCorner()) {
      add("corner", Effect.CHANGES, "leaves a sharp inner corner", STEP);
    }
    if (wanted.shape().levelEnd() && !other.shape().levelEnd()) {
      add("floor", Effect.CHANGES, "leaves no level floor", STEP / 2);
    }
  }

  private void speeds() {
    Ratio torque = Ratio.of(its.torqueNMm(), behaviour.torqueNMm());
    String needs =
        torque.noticed()
            ? say(
                "needs %.2f N mm instead of %.2f N mm at the same load",
                its.torqueNMm(), behaviour.torqueNMm())
            : "";
    add("torque", Effect.CHANGES, needs, TORQUE * torque.distance());
    Ratio speed = Ratio.of(Math.max(1, its.rpm()), Math.max(1, behaviour.rpm()));
    if (speed.distance() > Ratio.NOTICED / 2) {
      String words =
          say("turns at %s under load instead of %s", rpm(its.rpm()), rpm(behaviour.rpm()));
      // what a speed does to the cut is counted there
      add("speed", Effect.CHANGES, words, 0);
    }
    Ratio whirl = Ratio.of(its.whirlRpm(), behaviour.whirlRpm());
    String limit =
        whirl.distance() > Ratio.NOTICED / 2
            ? say("whirl limit %s instead of %s", rpm(its.whirlRpm()), rpm(behaviour.whirlRpm()))
            : "";
    double free = its.handpiece().drive().freeSpeed().rpm();
    boolean binds = whirl.value() < 1 && its.whirlRpm() < free;
    Effect effect = binds ? Effect.STOPS : Effect.TOLD;
    add("whirl", effect, limit, WHIRL * whirl.distance());
  }

  private static String rpm(double rpm) {
    return say("%,d per min", Math.round(rpm / 1000) * 1000).replace(',', '\u00a0');
  }

  private static String say(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
