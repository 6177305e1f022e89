package kerfwright.app.chairside;

import java.util.List;
import java.util.Map;
import kerfwright.app.input.BadInput;
import kerfwright.planner.FixedSteps;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.plan.CutPlan;

/** How a case of the page's address is read and planned. */
public interface RunPlans {
  /** The case the fields of an address name. */
  CutCase read(Map<String, List<String>> fields) throws BadInput;

  /** The fields of an address that name a case. */
  String query(CutCase cutCase);

  /** The plan as its page shows it. */
  CutPlan plan(CutCase cutCase);

  /** The plan of what remains. */
  CutPlan rest(CutCase cutCase, DrawerSnapshot stock, FixedSteps settled);
}
