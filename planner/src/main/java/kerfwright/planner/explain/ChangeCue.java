package kerfwright.planner.explain;

import java.util.Locale;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Segment;
import kerfwright.planner.plan.Purpose;
import org.jspecify.annotations.Nullable;

/** When to change to the next step, in one sentence. */
final class ChangeCue {
  private ChangeCue() {}

  static String of(Candidate now, @Nullable Candidate next) {
    Segment s = now.segment();
    String wear =
        now.lives() > 0.5
            ? String.format(
                Locale.ROOT,
                " Take a fresh one when it stops cutting, after about %s mm3.",
                Words.figure(s.volumeM3() * 1e9 / now.lives()))
            : "";
    return cue(s, now, next) + wear;
  }

  private static String cue(Segment s, Candidate now, @Nullable Candidate next) {
    String depth = String.format(Locale.ROOT, "%.1f mm", s.toM() * 1e3);
    if (s.purpose() == Purpose.FINISH || s.purpose() == Purpose.POLISH) {
      return next == null
          ? "Stop when the surface is even all over."
          : "Go on when the marks of the step before are gone.";
    }
    if (next == null) {
      return s.below() == null
          ? "Stop at " + depth + "."
          : "Stop at " + depth + ": " + low(s.below().label()) + " stays.";
    }
    Segment after = next.segment();
    if (s.punch()) {
      return "Once " + depth + " deep, widen to the outline.";
    }
    if (after.layer() != s.layer() && after.purpose() != Purpose.POLISH) {
      String change = now.id().equals(next.id()) ? "go on with the same" : "change to " + next.id();
      return "When "
          + low(after.material().label())
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

  private static String low(String label) {
    return label.toLowerCase(Locale.ROOT);
  }
}
