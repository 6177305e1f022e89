package kerfwright.planner;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import kerfwright.catalogue.stack.UsualStacks;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.UsualValues;
import kerfwright.planner.plan.Branch;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.quantity.Finding;
import kerfwright.quantity.Message;
import kerfwright.quantity.SourceKey;

/**
 * A crown of unknown material: a first touch common to all, then a branch for each material it may
 * be. Nothing is cut deeper than the first touch before a branch is chosen.
 */
final class UnknownCrown {
  /** What the first touch tells, by restoration; of the alloys the one that is harder to cut. */
  private static final Map<String, Message> SIGNS = new LinkedHashMap<>();

  static {
    SIGNS.put("metal-ceramic", Message.of("plan.sign-metal-ceramic"));
    SIGNS.put("full-co-cr", Message.of("plan.sign-full-metal"));
    SIGNS.put("zirconia-3y", Message.of("plan.sign-zirconia"));
    SIGNS.put("lithium-disilicate", Message.of("plan.sign-glass-ceramic"));
  }

  private UnknownCrown() {}

  static boolean is(CutCase c) {
    return UsualStacks.UNKNOWN_CROWN.equals(c.restoration());
  }

  /**
   * The plan of the first touch with its branches.
   *
   * @param planned plans a case after what is settled
   */
  static CutPlan plan(CutCase c, Settled settled, BiFunction<CutCase, Settled, CutPlan> planned) {
    List<Branch> branches = new ArrayList<>();
    SIGNS.forEach(
        (id, sign) ->
            UsualValues.supposing(c, id)
                .map(one -> new Branch(sign, id, planned.apply(one, Settled.NOTHING)))
                .ifPresent(branches::add));
    CutPlan touch = touch(c, settled, branches, planned);
    List<Finding> findings = new ArrayList<>(touch.findings());
    findings.add(
        Finding.warn(
            "unknown-crown", Message.of("finding.unknown-crown"), SourceKey.COMMON_PRACTICE));
    return touch.with(findings).branching(branches);
  }

  /** With an instrument a branch goes on with, where one fits; else the best in the drawer. */
  private static CutPlan touch(
      CutCase c,
      Settled settled,
      List<Branch> branches,
      BiFunction<CutCase, Settled, CutPlan> planned) {
    if (settled.taken().isEmpty()) {
      for (Branch branch : branches) {
        if (branch.plan().steps().isEmpty()) {
          continue;
        }
        PlannedStep first = branch.plan().steps().get(0);
        Settled.Taken taken = new Settled.Taken(first.instrument().id(), first.handpiece().id());
        CutPlan touch = planned.apply(c, new Settled(List.of(taken), settled.out()));
        if (!settled.out().contains(taken.instrument()) && !touch.refused()) {
          return touch;
        }
      }
    }
    return planned.apply(c, settled);
  }
}
