package kerfwright.app.teaching;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.drawing.TwoDigits;
import kerfwright.app.words.Say;
import kerfwright.physics.cutting.StrokeForces;
import kerfwright.physics.cutting.StrokeForces.WorkSide;
import kerfwright.planner.Varied;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.plan.RatioBand;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.uncertainty.Against;

/** What a change to a case makes different, in one sentence that claims no more than its bands. */
final class ChangeWords {
  private static final double LEAST_K = 0.05;

  private ChangeWords() {}

  static String sentence(Say say, String letter, String instrument, Varied varied) {
    Varied.Figures was = varied.before();
    Varied.Figures is = varied.after();
    Exclusion no = varied.refusal();
    if (is == null || no != null) {
      String why = no == null ? "" : say.of(no.message());
      return say.at("teaching.change-refused", letter, instrument, why);
    }
    List<String> said = new ArrayList<>();
    RatioBand time = Against.time(is.cut(), was.cut());
    boolean far = Math.max(time.typical(), 1 / time.typical()) > Comparison.NAMED;
    boolean open = far && time.open();
    if (far && !open) {
      times(say, said, "slower", "quicker", time.typical());
    }
    double warmer = is.peakRiseK().typical() - was.peakRiseK().typical();
    if (Math.abs(warmer) >= LEAST_K) {
      said.add(
          say.at(
              warmer > 0 ? "teaching.changed-warmer" : "teaching.changed-cooler",
              TwoDigits.of(say, Math.abs(warmer))));
    }
    times(say, said, "rougher", "smoother", is.raUm().typical() / was.raUm().typical());
    times(say, said, "wears-more", "wears-less", is.cut().lives() / was.cut().lives());
    double before = alongTravelN(was.cut());
    double after = alongTravelN(is.cut());
    if (Math.signum(before) != Math.signum(after)) {
      said.add(
          say.at(
              after > 0
                  ? "teaching.changed-pulled"
                  : after < 0 ? "teaching.changed-pushed" : "teaching.changed-neither"));
    }
    if (!open) {
      times(say, said, "dearer", "cheaper", is.cut().costS() / was.cut().costS());
    }
    if (open) {
      said.add(say.at("teaching.changed-open"));
    }
    return said.isEmpty()
        ? say.at("teaching.changed-nothing", letter)
        : letter + " " + String.join("; ", said) + ".";
  }

  private static void times(Say say, List<String> said, String more, String less, double ratio) {
    if (ratio > Comparison.NAMED) {
      said.add(say.at("teaching.changed-" + more, TwoDigits.of(say, ratio)));
    } else if (ratio < 1 / Comparison.NAMED) {
      said.add(say.at("teaching.changed-" + less, TwoDigits.of(say, 1 / ratio)));
    }
  }

  /** Force on the hand along the travel, N: positive pulls on, 0 where both walls or none count. */
  static double alongTravelN(Candidate c) {
    Stroke stroke = c.stroke();
    if (stroke != Stroke.AGAINST_ROTATION && stroke != Stroke.WITH_ROTATION) {
      return 0;
    }
    WorkSide side = stroke == Stroke.AGAINST_ROTATION ? WorkSide.LEFT : WorkSide.RIGHT;
    return StrokeForces.alongTravelN(side, c.cut().tangentialN(), c.contact());
  }
}
