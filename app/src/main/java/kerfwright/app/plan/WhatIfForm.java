package kerfwright.app.plan;

import java.util.List;
import java.util.Map;
import kerfwright.app.words.Say;
import kerfwright.planner.Variation;
import kerfwright.planner.WhatIf;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.plan.Stroke;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of a plan, and between which ends it may be asked.
 *
 * @param step order of the step asked about
 * @param instrument id of its instrument
 * @param instruments those allowed for it
 * @param rpm speed asked for
 * @param rpmStep grid of the speed
 * @param highestRpm highest speed allowed
 * @param load load asked for, N
 * @param stroke stroke asked for
 * @param water water asked for, mL/min
 * @param uses uses more behind it
 * @param variation the same as the planner takes it: what is as planned is left out
 */
public record WhatIfForm(
    int step,
    String instrument,
    List<Choice> instruments,
    long rpm,
    long rpmStep,
    long highestRpm,
    double load,
    Stroke stroke,
    long water,
    int uses,
    Variation variation) {
  private static final double LOAD_GRID_N = 0.05;
  private static final int MOST_INSTRUMENTS = 40;

  /** One of a list. */
  public record Choice(String id, String label) {}

  /**
   * Reads what was asked.
   *
   * @param sent the fields by name; what is missing or senseless is as planned
   * @param fresh true where speed and load begin anew, because step or instrument changed
   */
  public static WhatIfForm of(
      Say say, WhatIf plan, double plannedWater, Map<String, String> sent, boolean fresh) {
    int step = (int) Math.max(1, Math.min(plan.steps(), number(sent.get("step"), 1)));
    Candidate planned = plan.planned(step);
    List<Candidate> choices = plan.choices(step);
    String wanted = sent.getOrDefault("instrument", planned.id());
    Candidate chosen =
        choices.stream()
            .filter(c -> c.id().equals(wanted) && !wanted.equals(planned.id()))
            .findFirst()
            .orElse(planned);
    double highest = WhatIf.highestRpm(chosen);
    long grid = grid(highest);
    double rpm = fresh ? chosen.setRpm() : number(sent.get("rpm"), chosen.setRpm());
    double load = fresh ? chosen.loadN() : number(sent.get("load"), chosen.loadN());
    Stroke stroke = fresh ? chosen.stroke() : stroke(sent.get("stroke"), chosen.stroke());
    double water = number(sent.get("water"), plannedWater);
    int uses = (int) Math.max(0, Math.min(100, number(sent.get("uses"), 0)));
    return new WhatIfForm(
        step,
        chosen.id(),
        choices.stream()
            .limit(MOST_INSTRUMENTS)
            .map(c -> new Choice(c.id(), label(say, c)))
            .toList(),
        Math.round(rpm),
        grid,
        (long) Math.floor(highest),
        load,
        stroke,
        Math.round(water),
        uses,
        new Variation(
            step,
            chosen == planned ? null : chosen.id(),
            changed(rpm, chosen.setRpm(), grid),
            changed(load, chosen.loadN(), LOAD_GRID_N),
            stroke == chosen.stroke() ? null : stroke,
            changed(water, plannedWater, 1),
            uses));
  }

  private static String label(Say say, Candidate c) {
    return c.id() + ", " + Words.shortInstrument(say, c.instrument().properties());
  }

  /** Null where it is as planned, but for the grid of its slider. */
  private static @Nullable Double changed(double asked, double planned, double grid) {
    return Math.abs(asked - planned) <= grid * 0.51 ? null : asked;
  }

  private static Stroke stroke(@Nullable String id, Stroke otherwise) {
    return Identified.of(Stroke.class, id).orElse(otherwise);
  }

  private static long grid(double highest) {
    return highest > 100_000 ? 5_000 : highest > 20_000 ? 1_000 : 100;
  }

  private static double number(@Nullable String text, double otherwise) {
    try {
      double value = text == null ? otherwise : Double.parseDouble(text);
      return Double.isFinite(value) && value >= 0 ? value : otherwise;
    } catch (NumberFormatException senseless) {
      return otherwise;
    }
  }
}
