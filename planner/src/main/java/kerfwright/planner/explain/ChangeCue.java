package kerfwright.planner.explain;

import java.util.Locale;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Segment;
import kerfwright.planner.plan.Purpose;
import org.jspecify.annotations.Nullable;

/** When to change to the next step, in one sentence. */
final class ChangeCue {
  /** Deeper than this below the expected roof it is checked on a radiograph (common practice). */
  private static final double NO_DROP_M = 1e-3;

  private ChangeCue() {}

  static String of(Candidate now, @Nullable Candidate next, Procedure procedure) {
    Segment s = now.segment();
    String wear =
        now.lives() > 0.5
            ? String.format(
                Locale.ROOT,
                " Take a fresh one when it stops cutting, after about %s mm3.",
                Words.figure(s.volumeM3() * 1e9 / now.lives()))
            : "";
    return cue(s, now, next, procedure) + wear;
  }

  private static String cue(
      Segment s, Candidate now, @Nullable Candidate next, Procedure procedure) {
    String depth = String.format(Locale.ROOT, "%.1f mm", s.toM() * 1e3);
    if (s.purpose() == Purpose.FINISH || s.purpose() == Purpose.POLISH) {
      return next == null
          ? "Stop when the surface is even all over."
          : "Go on when the marks of the step before are gone.";
    }
    if (next == null) {
      return end(s, depth, procedure);
    }
    Segment after = next.segment();
    if (s.punch()) {
      return "Once " + depth + " deep, widen to the outline.";
    }
    if (after.layer() != s.layer()) {
      String change = now.id().equals(next.id()) ? "go on with the same" : "change to " + next.id();
      return "When "
          + after.material().inSentence()
          + " shows at about "
          + depth
          + ", "
          + change
          + ".";
    }
    if (after.purpose() == Purpose.APPROACH) {
      return "From " + depth + " go on with a light hand.";
    }
    return "At " + depth + " change to " + next.id() + ".";
  }

  private static String end(Segment s, String depth, Procedure procedure) {
    if (s.below() == null) {
      // the roof of the chamber may be absent; a bur that goes on reaches the floor
      return procedure == Procedure.ACCESS_CAVITY
          ? String.format(
              Locale.ROOT,
              "Stop when the tip drops into the chamber, expected at about %s; without a drop, stop at"
                  + " %.1f mm and check on a radiograph.",
              depth,
              (s.toM() + NO_DROP_M) * 1e3)
          : "Stop at " + depth + ".";
    }
    if (s.wholeBelow()) {
      return "Stop when " + s.below().inSentence() + " shows, at about " + depth + ": it stays.";
    }
    return String.format(
        Locale.ROOT,
        "Stop at %s: %.2f mm of %s stay.",
        depth,
        s.marginM() * 1e3,
        s.below().inSentence());
  }
}
