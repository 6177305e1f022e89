package kerfwright.app.print;

import java.util.List;
import java.util.Map;
import kerfwright.app.drawing.strip.LayerStrip;
import kerfwright.app.plan.PlanDrawings;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.CutPlan;

/** The card of a plan for the tray: one side of A5, as large as what is on it allows. */
public final class PlanCard {
  /**
   * How large it is set.
   *
   * @param points size of its letters
   * @param picture size of its pictures as a share of the widest
   */
  private record Setting(double points, double picture) {}

  private static final List<Setting> SETTINGS =
      List.of(
          new Setting(14, 1.6),
          new Setting(13, 1.45),
          new Setting(12, 1.3),
          new Setting(11, 1.15),
          new Setting(10, 1),
          new Setting(9.4, 0.95),
          new Setting(8.8, 0.9),
          new Setting(8.2, 0.85),
          new Setting(7.6, 0.78),
          new Setting(7.1, 0.7),
          new Setting(6.6, 0.6),
          new Setting(6, 0.5));

  /** So many operations leave room for a taller picture and larger letters. */
  private static final int FEW = 4;

  /** Width of what is printed, in the pixels of the drawings. */
  private static final double PAGE_WIDE = 500;

  private PlanCard() {}

  /** The card as a PDF document. */
  public static byte[] pdf(Say say, CutPlan plan) {
    int steps = plan.steps().size();
    LayerStrip.Place place = steps <= FEW ? LayerStrip.Place.CARD_OF_FEW : LayerStrip.Place.CARD;
    LayerStrip strip = PlanDrawings.strip(say, plan, place);
    double widest = PAGE_WIDE / strip.width();
    List<Setting> settings = SETTINGS.subList(steps <= FEW ? 0 : 4, SETTINGS.size());
    return OnePage.pdf(
        settings,
        setting ->
            card(
                say,
                plan,
                strip,
                new Setting(setting.points(), Math.min(widest, setting.picture()))));
  }

  private static String card(Say say, CutPlan plan, LayerStrip strip, Setting setting) {
    LayerStrip sized = strip.each(svg -> Paper.drawing(svg, setting.picture()));
    return Templates.render(
        say, "card.jte", Map.of("plan", plan, "strip", sized, "size", setting.points()));
  }
}
