package kerfwright.app.web;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseReader;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Node;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.plan.CutPlan;

/**
 * Makes the plans of the pages. The last few are remembered, because page, card and JSON of a plan
 * are asked for one after the other; nothing depends on it.
 */
final class PlanDesk {
  static final int SAMPLES = 256;
  static final long SEED = 1;
  private static final int REMEMBERED = 32;

  private final Wiring wiring;
  private final DrawerSnapshot drawer;
  private final CaseReader reader;
  private final Map<CutCase, CutPlan> recent =
      Collections.synchronizedMap(
          new LinkedHashMap<CutCase, CutPlan>(16, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<CutCase, CutPlan> eldest) {
              return size() > REMEMBERED;
            }
          });

  PlanDesk(Wiring wiring, DrawerSnapshot drawer) {
    this.wiring = wiring;
    this.drawer = drawer;
    this.reader = new CaseReader(wiring.cases());
  }

  DrawerSnapshot drawer() {
    return drawer;
  }

  CutCase read(Node.Mapping node) throws BadInput {
    return reader.read(node, "case");
  }

  CutPlan plan(CutCase cutCase) {
    CutPlan known = recent.get(cutCase);
    if (known != null) {
      return known;
    }
    CutPlan made = plan(cutCase, SAMPLES, SEED);
    recent.put(cutCase, made);
    return made;
  }

  CutPlan plan(CutCase cutCase, int samples, long seed) {
    return wiring.plans().plan(cutCase, drawer, samples, seed);
  }
}
