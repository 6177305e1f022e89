package kerfwright.app.print;

import java.util.Map;
import kerfwright.app.plan.PlanDrawings;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.CutPlan;

/**
 * The card of a plan for the tray: A5, PDF. What to do stands in front, why and cautions behind.
 */
public final class PlanCard {
  private static final int TWO_SIDES = 2;

  private PlanCard() {}

  /** The card as a PDF document. Long ones do not begin a new page for the back. */
  public static byte[] pdf(Say say, CutPlan plan, PlanDrawings drawings) {
    String section = Paper.drawing(drawings.lowSection(say, plan));
    byte[] card = card(say, plan, section, "always");
    return Paper.pages(card) > TWO_SIDES ? card(say, plan, section, "auto") : card;
  }

  private static byte[] card(Say say, CutPlan plan, String section, String back) {
    return Paper.pdf(
        Templates.render(say, "card.jte", Map.of("plan", plan, "section", section, "back", back)));
  }
}
