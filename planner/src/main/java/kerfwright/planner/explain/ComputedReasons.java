package kerfwright.planner.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kerfwright.physics.cutting.BladedCutting;
import kerfwright.physics.cutting.CrackThreshold;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.plan.Purpose;
import kerfwright.planner.plan.Reason;
import kerfwright.planner.tool.AbrasivePart;
import kerfwright.planner.tool.BladedPart;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;

/** What the models say for and against a choice, in words. */
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
              "It blunts: the step uses " + percent(chosen.lives()) + " of its life.",
              false,
              "khrushchov-1974"));
    }
    otherFamily(chosen, others).ifPresent(reasons::add);
    return reasons;
  }

  private static void abrasive(Candidate c, List<Reason> reasons) {
    if (c.segment().purpose() == Purpose.POLISH) {
      reasons.add(
          computed(
              "model-polish",
              String.format(
                  Locale.ROOT,
                  "Its fine grains in an elastic bond leave Ra %.2f um.",
                  c.raM() * 1e6),
              true,
              "yin-2003"));
      return;
    }
    double grain = c.cut().unitLoadN();
    double threshold = CrackThreshold.loadN(c.segment().material().typical());
    boolean cracks = c.cut().brittleShare() > CRACKS;
    String figures =
        "a grain carries "
            + Words.figure(grain)
            + " N on average, cracks need "
            + (threshold > FAR_ABOVE * grain
                ? "far more"
                : "about " + Words.figure(threshold) + " N");
    reasons.add(
        computed(
            "model-crack-share",
            cracks
                ? (c.cut().brittleShare() > 0.5
                        ? "The layer is cracked off: "
                        : "The most loaded grains crack the layer off, the others plough: ")
                    + figures
                    + "; "
                    + percent(c.cut().brittleShare())
                    + " of the load cracks."
                : "Grains only plough here: " + figures + ".",
            cracks,
            "lawn-marshall-1979"));
    if (c.cut().cleanShare() < LOADED) {
      reasons.add(
          computed(
              "model-loading",
              "Ductile chips stick: "
                  + percent(1 - c.cut().cleanShare())
                  + " of its cut is lost to loading.",
              false,
              "siegel-load-1997"));
    }
  }

  private static void bladed(Candidate c, BladedPart part, List<Reason> reasons) {
    double cutting = BladedCutting.cuttingBlades(part.tool(), c.loadN());
    boolean lifts = c.cut().chipShare() > 0.25;
    reasons.add(
        computed(
            "model-chip",
            String.format(
                Locale.ROOT,
                "%.0f of its %d blades cut at this load, each lifting a chip of %s; %s of the edge's"
                    + " work lifts chips, the rest ploughs.",
                cutting,
                part.tool().blades(),
                Words.thickness(c.cut().chipThicknessM()),
                percent(c.cut().chipShare())),
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
                    String.format(
                        Locale.ROOT,
                        "The best %s here (%s) would cut for %s, this one %s; it would use %s of its"
                            + " life.",
                        o.instrument().properties().kind().label(),
                        o.id(),
                        Words.time(o.cutS()),
                        Words.time(chosen.cutS()),
                        percent(o.lives())),
                    o.costS() >= chosen.costS()));
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", share * 100);
  }

  private static Reason computed(String code, String text, boolean supports, String... sources) {
    List<SourceKey> keys = new ArrayList<>();
    for (String source : sources) {
      keys.add(new SourceKey(source));
    }
    return new Reason(code, text, supports, Basis.FITTED, keys);
  }
}
