package kerfwright.planner.plan;

import java.util.List;
import kerfwright.quantity.Message;
import kerfwright.quantity.SourceKey;

/**
 * How a plan goes on once a first touch has told what a restoration is made of.
 *
 * @param id id of the row it comes from
 * @param tells what the touch shows
 * @param sources where that comes from
 * @param plan the plan for that restoration, from its surface
 */
public record Branch(String id, Message tells, List<SourceKey> sources, CutPlan plan) {
  public Branch {
    sources = List.copyOf(sources);
  }

  /** The restoration it turned out to be, an id of the usual stacks. */
  public String restoration() {
    String known = plan.cutCase().restoration();
    return known == null ? "" : known;
  }
}
