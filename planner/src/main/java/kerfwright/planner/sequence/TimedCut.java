package kerfwright.planner.sequence;

import kerfwright.planner.choice.Candidate;
import kerfwright.planner.operation.Pace;

/**
 * A chosen cut with its pace.
 *
 * @param candidate what is done
 * @param pace contact and pause
 */
public record TimedCut(Candidate candidate, Pace pace) {
  public double pausesS() {
    return pace.pausesS(candidate.cutS());
  }

  /** Time of the simulated heat: no less than the literature's. */
  public double heatS() {
    return candidate.heatS() + pace.pausesS(candidate.heatS());
  }

  public double timeS() {
    return candidate.cutS() + pausesS();
  }
}
