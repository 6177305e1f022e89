package kerfwright.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.FilledInNotes;
import kerfwright.planner.casework.FinishGoal;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.casework.KeepDefaults;
import kerfwright.planner.casework.OwnPace;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.heat.CoolSequence;
import kerfwright.planner.heat.Remedies;
import kerfwright.planner.heat.WallHistory;
import kerfwright.planner.plan.PulpHeat;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.sequence.TimedCut;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Length;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/** What a plan says about itself besides its steps. */
final class PlanNotes {
  private static final double ENOUGH_WATER_ML_PER_MIN = 49.9;
  private static final double USUAL_WATER_ML_PER_MIN = 50;
  private static final SourceKey PULP_LIMIT = new SourceKey("zach-cohen-1965");

  private PlanNotes() {}

  /** What the case left open and the plan filled in. */
  static List<Finding> filledIn(CutCase c) {
    List<Finding> notes = new ArrayList<>();
    Keep keep = KeepDefaults.of(c);
    if (c.keep() == null && keep != null) {
      Length least = keep.atLeast();
      notes.add(
          Finding.note(
              "keep-filled-in",
              least == null
                  ? Message.of("finding.keep-filled-in-all", kept(keep))
                  : Message.of(
                      "finding.keep-filled-in", Rounded.places(least.millimetres(), 2), kept(keep)),
              SourceKey.COMMON_PRACTICE));
    }
    if (c.stackFilledIn()) {
      notes.add(
          new Finding(
              Finding.Severity.NOTE,
              "usual-stack",
              Message.of("finding.usual-stack"),
              c.stackSources()));
    }
    notes.addAll(FilledInNotes.of(c));
    return notes;
  }

  /** How far the plan follows the practice's own log; nothing where it follows the literature. */
  static Optional<Finding> ownPace(OwnPace pace, List<TimedCut> sequence) {
    if (pace.logged() == 0) {
      return Optional.empty();
    }
    List<Message> said = new ArrayList<>();
    for (TimedCut cut : sequence) {
      Candidate c = cut.candidate();
      Message material = Message.of("label.material-" + c.material().id());
      double off = Math.abs(c.ownPace() - 1);
      Message one =
          off < 0.02
              ? Message.of("finding.own-pace-alike", material)
              : Message.of(
                  c.ownPace() < 1 ? "finding.own-pace-faster" : "finding.own-pace-slower",
                  Rounded.percent(off),
                  material);
      if (!said.contains(one)) {
        said.add(one);
      }
    }
    return Optional.of(
        Finding.note("own-pace", Message.of("finding.own-pace", said, pace.logged())));
  }

  /** A warning where the last finishing or polishing leaves the surface rougher than wanted. */
  static Optional<Finding> notSmooth(CutCase c, List<TimedCut> sequence) {
    Length goal = FinishGoal.of(c);
    Candidate last = null;
    for (TimedCut cut : sequence) {
      Purpose purpose = cut.candidate().purpose();
      last = purpose == Purpose.FINISH || purpose == Purpose.POLISH ? cut.candidate() : last;
    }
    if (goal == null || last == null || last.raM() <= goal.metres()) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.warn(
            "finish-not-reached",
            Message.of(
                "finding.finish-not-reached",
                Rounded.places(goal.micrometres(), 2),
                Rounded.places(last.raM() * 1e6, 2)),
            new SourceKey("yin-2003")));
  }

  /** What was done to keep the pulp cool. */
  static Optional<Finding> remedies(List<Message> taken) {
    return taken.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Finding.note("heat-remedies", Message.of("finding.heat-remedies", taken), PULP_LIMIT));
  }

  /** The refusal where nothing keeps the pulp cool. */
  static Finding tooHot(CoolSequence hot, Remedies remedies, boolean dry) {
    double withWater = remedies.peakWithWaterK(hot.sequence(), USUAL_WATER_ML_PER_MIN);
    Message water =
        withWater < WallHistory.LIMIT_K
            ? dry
                ? Message.of("finding.pulp-heat-use-water")
                : Message.of("finding.pulp-heat-water", Rounded.figure(withWater))
            : Message.of("finding.pulp-heat-visits");
    return Finding.refuse(
        "pulp-heat",
        dry
            ? Message.of("finding.pulp-heat-dry", water)
            : Message.of("finding.pulp-heat", Rounded.figure(hot.shown().peakK()), water),
        PULP_LIMIT);
  }

  private static Message kept(Keep keep) {
    return Message.of("label.material-" + keep.materialId());
  }

  /** What to be warned of in a finished plan. */
  static List<Finding> warnings(CutCase c, @Nullable PulpHeat pulp) {
    List<Finding> warnings = new ArrayList<>();
    if (pulp != null && pulp.peakRiseK().high() >= WallHistory.LIMIT_K) {
      warnings.add(
          Finding.warn(
              "pulp-heat-uncertain",
              c.dry()
                  ? Message.of("finding.pulp-heat-uncertain-dry")
                  : Message.of(
                      "finding.pulp-heat-uncertain", Rounded.figure(pulp.peakRiseK().high())),
              PULP_LIMIT));
    }
    double left = pulp == null ? Double.POSITIVE_INFINITY : pulp.remainingDentineMm().low();
    if (left < PulpDistance.LEAST_M * 1e3) {
      warnings.add(
          Finding.warn(
              "remaining-dentine-uncertain",
              Message.of("finding.remaining-dentine-uncertain", Rounded.places(left, 1)),
              new SourceKey("murray-2003")));
    }
    double water = c.coolant().millilitresPerMinute();
    if (water < ENOUGH_WATER_ML_PER_MIN) {
      warnings.add(
          Finding.warn(
              "little-water",
              Message.of("finding.little-water", Rounded.figure(water)),
              new SourceKey("supplier-safety-notes"),
              new SourceKey("cavalcanti-2005")));
    }
    warnings.add(orderOfMagnitude());
    return warnings;
  }

  /** How far the models may be trusted; the page of published findings has the figures. */
  private static Finding orderOfMagnitude() {
    return Finding.note("order-of-magnitude", Message.of("finding.order-of-magnitude"));
  }
}
