package kerfwright.app.plan;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import kerfwright.app.json.JsonText;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.PulpHeat;

/** What a script needs beside the heat curve to show step and depth at a time. */
public final class PlanTrace {
  private PlanTrace() {}

  /** As one JSON object; empty where there is no curve. */
  public static String json(Say say, CutPlan plan) {
    PulpHeat pulp = plan.pulp();
    if (pulp == null || pulp.curve().timesS().size() < 2) {
      return "";
    }
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    List<Double> starts = StepTimes.startsS(plan);
    var steps = json.putArray("steps");
    for (int i = 0; i < plan.steps().size(); i++) {
      PlannedStep step = plan.steps().get(i);
      ObjectNode one = steps.addObject();
      one.put("order", step.order());
      one.put("name", step.instrument().id() + ", " + Words.operation(say, step));
      one.set("fromS", JsonText.number(starts.get(i)));
      one.set("toS", JsonText.number(starts.get(i) + step.timeS().typical()));
      one.set("fromMm", JsonText.number(step.fromMm().typical()));
      one.set("toMm", JsonText.number(step.toMm().typical()));
    }
    return json.toString();
  }
}
