package kerfwright.planner.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import kerfwright.physics.heat.Coolant;
import kerfwright.physics.heat.HeatStretch;

/** Turns timed cuts into strokes and pauses of a heat model, and a pause in air after them. */
final class Strokes {
  static final double AFTER_S = 60;
  private static final double SHORTEST_S = 0.05;

  private Strokes() {}

  static List<HeatStretch> of(
      List<CutHeat> cuts,
      ToDoubleFunction<CutHeat> fluxWPerM2,
      Function<CutHeat, Coolant> under,
      Coolant spray,
      Coolant air) {
    List<HeatStretch> stretches = new ArrayList<>();
    for (CutHeat cut : cuts) {
      if (cut.changeS() > 0) {
        stretches.add(HeatStretch.pause(cut.changeS(), air));
      }
      double flux = fluxWPerM2.applyAsDouble(cut);
      Coolant whileOn = under.apply(cut);
      double cutting = Math.max(SHORTEST_S, cut.cuttingS());
      double feed = cut.deepensMm() / cutting;
      double contact = Math.min(cut.contactS(), cutting);
      double whole = Math.floor(cutting / contact + 1e-9) * (contact + cut.pauseS());
      double rest = cutting - Math.floor(cutting / contact + 1e-9) * contact;
      stretches.add(
          new HeatStretch(whole, flux, contact, cut.pauseS(), whileOn, spray, spray, feed));
      if (rest > 1e-6) {
        stretches.add(new HeatStretch(rest, flux, rest, 0, whileOn, spray, spray, feed));
      }
    }
    stretches.add(HeatStretch.pause(AFTER_S, air));
    return stretches;
  }
}
