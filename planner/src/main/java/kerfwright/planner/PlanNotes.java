package kerfwright.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Keep;
import kerfwright.planner.explain.Words;
import kerfwright.planner.heat.CoolSequence;
import kerfwright.planner.heat.Remedies;
import kerfwright.planner.heat.WallHistory;
import kerfwright.planner.plan.PulpHeat;
import kerfwright.planner.sequence.Segments;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Length;
import kerfwright.quantity.SourceKey;

/** What a plan says about itself besides its steps. */
final class PlanNotes {
  private static final double ENOUGH_WATER_ML_PER_MIN = 49.9;
  private static final double USUAL_WATER_ML_PER_MIN = 50;
  private static final SourceKey PULP_LIMIT = new SourceKey("zach-cohen-1965");

  private PlanNotes() {}

  /** What the case left open and the plan filled in. */
  static List<Finding> filledIn(CutCase c, Segments segments) {
    List<Finding> notes = new ArrayList<>();
    Keep keep = segments.keep();
    if (c.keep() == null && keep != null) {
      Length least = keep.atLeast();
      notes.add(
          Finding.note(
              "keep-filled-in",
              "The case does not say what must stay; "
                  + (least == null
                      ? "all of the " + keep.materialId() + " is kept."
                      : String.format(
                          Locale.ROOT,
                          "%.2f mm of %s are kept.",
                          least.millimetres(),
                          keep.materialId())),
              SourceKey.COMMON_PRACTICE));
    }
    if (c.stackFilledIn()) {
      notes.add(
          new Finding(
              Finding.Severity.NOTE,
              "usual-stack",
              "The layers were not given: the usual stack for this tooth and restoration is filled"
                  + " in. Check it against the radiograph.",
              c.stackSources()));
    }
    return notes;
  }

  /** What was done to keep the pulp cool. */
  static Optional<Finding> remedies(List<String> taken) {
    return taken.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Finding.note(
                "heat-remedies",
                "To stay below 5.5 K at the pulp wall the plan takes "
                    + String.join(", ", taken)
                    + ".",
                PULP_LIMIT));
  }

  /** The refusal where nothing keeps the pulp cool. */
  static Finding tooHot(CoolSequence hot, Remedies remedies) {
    double withWater = remedies.peakWithWaterK(hot.sequence(), USUAL_WATER_ML_PER_MIN);
    String water =
        withWater < WallHistory.LIMIT_K
            ? String.format(
                Locale.ROOT, " With 50 mL/min of water it would be %s K.", Words.figure(withWater))
            : " Cut in several visits, or with hand instruments near the pulp.";
    return Finding.refuse(
        "pulp-heat",
        String.format(
                Locale.ROOT,
                "The pulp wall would warm by %s K; 5.5 K is the screening limit and lighter load,"
                    + " lower speed and pauses do not bring it below.",
                Words.figure(hot.shown().peakK()))
            + water,
        PULP_LIMIT);
  }

  /** What to be warned of in a finished plan. */
  static List<Finding> warnings(CutCase c, PulpHeat pulp) {
    List<Finding> warnings = new ArrayList<>();
    boolean protects = c.pulp().protectsPulp();
    if (protects && pulp.peakRiseK().high() >= WallHistory.LIMIT_K) {
      warnings.add(
          Finding.warn(
              "pulp-heat-uncertain",
              String.format(
                  Locale.ROOT,
                  "The upper end of the estimate reaches %s K at the pulp wall, above the 5.5 K"
                      + " screening limit: lighter, shorter contacts and full water.",
                  Words.figure(pulp.peakRiseK().high())),
              PULP_LIMIT));
    }
    double left = pulp.remainingDentineMm().low();
    if (protects && left < PulpDistance.LEAST_M * 1e3) {
      warnings.add(
          Finding.warn(
              "remaining-dentine-uncertain",
              String.format(
                  Locale.ROOT,
                  "If the dentine is as thin as it may be, only %.1f mm would remain over the pulp:"
                      + " measure on the radiograph and stop early.",
                  left),
              new SourceKey("murray-2003")));
    }
    double water = c.coolant().millilitresPerMinute();
    if (water < ENOUGH_WATER_ML_PER_MIN) {
      warnings.add(
          Finding.warn(
              "little-water",
              String.format(
                  Locale.ROOT,
                  "%s mL/min of water is below the usual 50; practices averaged 29, so measure"
                      + " yours.",
                  Words.figure(water)),
              new SourceKey("supplier-safety-notes"),
              new SourceKey("cavalcanti-2005")));
    }
    warnings.add(
        Finding.note(
            "order-of-magnitude",
            "Removal rates, times, wear and heat are orders of magnitude: 95 percent bands of a"
                + " factor of two for removal and for the heat entering the tooth are built"
                + " in, neither is measured for your instruments."));
    return warnings;
  }
}
