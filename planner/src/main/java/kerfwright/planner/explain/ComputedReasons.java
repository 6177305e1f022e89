package kerfwright.planner.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kerfwright.physics.cutting.BladedCutting;
import kerfwright.physics.cutting.CrackThreshold;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Reason;
import kerfwright.planner.tool.AbrasivePart;
import kerfwright.planner.tool.BladedPart;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import kerfwright.quantity.SourceKey;

/** What the models say for and against a choice. */
final class ComputedReasons {
  private static final double CRACKS = 0.2;
  private static final double LOADED = 0.75;
  private static final double FAR_ABOVE = 1000;
  private static final double MUCH_OF_A_LIFE = 0.5;

  private ComputedReasons() {}

  static List<Reason> of(Candidate chosen, List<Candidate> others) {
    List<Reason> reasons = new ArrayList<>();
    if (chosen.instrument().part() instanceof AbrasivePart) {
      abrasive(chosen, reasons);
    } else if (chosen.instrument().part() instanceof BladedPart bladed) {
      bladed(chosen, bladed, reasons);
    }
    if (chosen.lives() > MUCH_OF_A_LIFE) {
      reasons.add(
          computed(
              "model-wear",
              Message.of("reason.model-wear", Rounded.percent(chosen.lives())),
              false,
              "khrushchov-1974"));
    }
    otherFamily(chosen, others).ifPresent(reasons::add);
    return reasons;
  }

  private static void abrasive(Candidate c, List<Reason> reasons) {
    if (c.purpose() == Purpose.POLISH) {
      reasons.add(
          computed(
              "model-polish",
              Message.of("reason.model-polish", Rounded.places(c.raM() * 1e6, 2)),
              true,
              "yin-2003"));
      return;
    }
    reasons.add(
        computed(
            "model-crack-share",
            crackShare(c),
            c.cut().brittleShare() > CRACKS,
            "lawn-marshall-1979"));
    if (c.cut().cleanShare() < LOADED) {
      reasons.add(
          computed(
              "model-loading",
              Message.of("reason.model-loading", Rounded.percent(1 - c.cut().cleanShare())),
              false,
              "siegel-load-1997"));
    }
  }

  private static Message crackShare(Candidate c) {
    double grain = c.cut().unitLoadN();
    double threshold = CrackThreshold.loadN(c.material().typical());
    Message loads =
        threshold > FAR_ABOVE * grain
            ? Message.of("reason.model-grain-far", Rounded.figure(grain))
            : Message.of("reason.model-grain", Rounded.figure(grain), Rounded.figure(threshold));
    double share = c.cut().brittleShare();
    if (share <= CRACKS) {
      return Message.of("reason.model-crack-share-none", loads);
    }
    return Message.of(
        share > 0.5 ? "reason.model-crack-share-most" : "reason.model-crack-share-some",
        loads,
        Rounded.percent(share));
  }

  private static void bladed(Candidate c, BladedPart part, List<Reason> reasons) {
    double cutting = BladedCutting.cuttingBlades(part.tool(), c.loadN());
    boolean lifts = c.cut().chipShare() > 0.25;
    reasons.add(
        computed(
            "model-chip",
            Message.of(
                "reason.model-chip",
                Rounded.places(cutting, 0),
                part.tool().blades(),
                Words.thickness(c.cut().chipThicknessM()),
                Rounded.percent(c.cut().chipShare())),
            lifts,
            "enamel-carbide-2019"));
  }

  /** The best of the other family: what it would take. */
  private static Optional<Reason> otherFamily(Candidate chosen, List<Candidate> others) {
    boolean bladed = chosen.instrument().part() instanceof BladedPart;
    return others.stream()
        .filter(o -> o.instrument().part() instanceof BladedPart != bladed)
        .min(Comparator.comparingDouble(Candidate::costS).thenComparing(Candidate::id))
        .map(
            o ->
                computed(
                    "model-other-family",
                    Message.of(
                        "reason.model-other-family",
                        Words.kind(o.instrument().properties().kind()),
                        o.id(),
                        Words.time(o.cutS()),
                        Words.time(chosen.cutS()),
                        Rounded.percent(o.lives())),
                    o.costS() >= chosen.costS()));
  }

  private static Reason computed(
      String code, Message message, boolean supports, String... sources) {
    List<SourceKey> keys = new ArrayList<>();
    for (String source : sources) {
      keys.add(new SourceKey(source));
    }
    return new Reason(code, message, supports, Basis.FITTED, keys);
  }
}
