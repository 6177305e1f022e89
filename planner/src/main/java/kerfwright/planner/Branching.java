package kerfwright.planner;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.UsualValues;
import kerfwright.planner.plan.Branch;
import kerfwright.planner.plan.CutPlan;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Message;

/**
 * A restoration of unknown material is touched first; what it may turn out to be is planned, one
 * plan a row of the usual stacks, so that the tray holds what any of them needs.
 */
final class Branching {
  private Branching() {}

  /** The plan with its branches; as it is where the material is known or it is refused. */
  static CutPlan of(
      CutPlan touch,
      List<kerfwright.catalogue.stack.Branch> rows,
      Function<CutCase, CutPlan> planned) {
    if (rows.isEmpty() || touch.refused()) {
      return touch;
    }
    List<Branch> branches =
        rows.parallelStream()
            .flatMap(
                row ->
                    UsualValues.turnedOut(touch.cutCase(), row).stream()
                        .map(
                            c ->
                                new Branch(
                                    row.id(),
                                    Message.of("branch." + row.id()),
                                    row.sources(),
                                    planned.apply(c))))
            .toList();
    return touch.with(branches, findings(touch, branches), cautions(touch, branches));
  }

  private static List<Finding> findings(CutPlan touch, List<Branch> branches) {
    List<Finding> said = new ArrayList<>(touch.findings());
    List<Branch> refused = branches.stream().filter(b -> b.plan().refused()).toList();
    if (refused.size() == branches.size()) {
      said.add(0, Finding.refuse("no-branch", Message.of("finding.no-branch")));
      return said;
    }
    said.add(0, Finding.warn("branches", Message.of("finding.branches", branches.size())));
    for (Branch one : refused) {
      said.add(
          Finding.warn(
              "branch-refused",
              Message.of(
                  "finding.branch-refused", Message.of("label.restoration-" + one.restoration()))));
    }
    return said;
  }

  private static List<Finding> cautions(CutPlan touch, List<Branch> branches) {
    Set<Finding> minded = new LinkedHashSet<>(touch.cautions());
    branches.forEach(one -> minded.addAll(one.plan().cautions()));
    return List.copyOf(minded);
  }
}
