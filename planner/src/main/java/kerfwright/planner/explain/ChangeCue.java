package kerfwright.planner.explain;

import java.math.BigDecimal;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Segment;
import kerfwright.planner.plan.Purpose;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;
import org.jspecify.annotations.Nullable;

/** When to change to the next step, in one sentence. */
final class ChangeCue {
  /** Deeper than this below the expected roof it is checked on a radiograph (common practice). */
  private static final double NO_DROP_M = 1e-3;

  private ChangeCue() {}

  static Message of(Candidate now, @Nullable Candidate next, Procedure procedure) {
    Segment s = now.segment();
    Message cue = cue(s, now, next, procedure);
    return now.lives() > 0.5
        ? Message.of("cue.worn", cue, Rounded.figure(s.volumeM3() * 1e9 / now.lives()))
        : cue;
  }

  private static Message cue(
      Segment s, Candidate now, @Nullable Candidate next, Procedure procedure) {
    BigDecimal depthMm = Rounded.places(s.toM() * 1e3, 1);
    if (s.purpose() == Purpose.FINISH || s.purpose() == Purpose.POLISH) {
      return Message.of(next == null ? "cue.even" : "cue.marks-gone");
    }
    if (next == null) {
      return end(s, depthMm, procedure);
    }
    Segment after = next.segment();
    if (s.punch()) {
      return Message.of("cue.widen", depthMm);
    }
    if (after.layer() != s.layer()) {
      Message shows = Words.material(after.material());
      return now.id().equals(next.id())
          ? Message.of("cue.shows-same", shows, depthMm)
          : Message.of("cue.shows-change", shows, depthMm, next.id());
    }
    return after.purpose() == Purpose.APPROACH
        ? Message.of("cue.light-hand", depthMm)
        : Message.of("cue.change-at", depthMm, next.id());
  }

  private static Message end(Segment s, BigDecimal depthMm, Procedure procedure) {
    if (s.below() == null) {
      // the roof of the chamber may be absent; a bur that goes on reaches the floor
      return Procedure.ACCESS_CAVITY.equals(procedure)
          ? Message.of("cue.chamber", depthMm, Rounded.places((s.toM() + NO_DROP_M) * 1e3, 1))
          : Message.of("cue.stop-at", depthMm);
    }
    if (!s.wholeBelow() && Double.isInfinite(s.marginM())) {
      // nothing of the layer below has to be left
      return Message.of("cue.stop-at", depthMm);
    }
    Message below = Words.material(s.below());
    return s.wholeBelow()
        ? Message.of("cue.stays", below, depthMm)
        : Message.of("cue.left", depthMm, Rounded.places(s.marginM() * 1e3, 2), below);
  }
}
