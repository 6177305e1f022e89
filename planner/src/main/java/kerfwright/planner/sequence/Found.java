package kerfwright.planner.sequence;

import java.util.List;
import java.util.Map;
import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;
import kerfwright.planner.operation.Work;

/**
 * What a search for an operation found.
 *
 * @param work the operation
 * @param candidates allowed choices, each at its cheapest operating point
 * @param out why other instruments are out, by id
 */
public record Found(Work work, List<Candidate> candidates, Map<String, Exclusion> out) {
  public Found {
    candidates = List.copyOf(candidates);
    out = Map.copyOf(out);
  }
}
