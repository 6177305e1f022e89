package kerfwright.app.teaching;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerfwright.app.input.BadInput;
import kerfwright.planner.WhatIf;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.plan.CutPlan;

/** Cases and their plans, as the pages of a plan show them. */
public interface CasePlans {
  CutCase read(Map<String, List<String>> fields) throws BadInput;

  CutPlan plan(CutCase cutCase);

  /** The same plan, open to changes; empty where it is refused. */
  Optional<WhatIf> whatIf(CutCase cutCase);
}
