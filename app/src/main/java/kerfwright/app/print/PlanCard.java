package kerfwright.app.print;

import java.util.Map;
import kerfwright.app.plan.PlanDrawings;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.CutPlan;

/** The card of a plan for the tray: A5, PDF. */
public final class PlanCard {
  private PlanCard() {}

  /** The card as a PDF document. */
  public static byte[] pdf(Say say, CutPlan plan, PlanDrawings drawings) {
    String section = Paper.drawing(drawings.section(say, plan));
    return Paper.pdf(Templates.render(say, "card.jte", Map.of("plan", plan, "section", section)));
  }
}
