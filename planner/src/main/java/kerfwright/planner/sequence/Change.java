package kerfwright.planner.sequence;

import kerfwright.planner.choice.Candidate;

/** What it takes to go from one choice to the next. */
public final class Change {
  private Change() {}

  /** Seconds to change instrument, and handpiece where needed. */
  public static double seconds(Candidate from, Candidate to) {
    if (!from.handpiece().id().equals(to.handpiece().id())) {
      return Prices.HANDPIECE_S;
    }
    return from.id().equals(to.id()) ? 0 : Prices.CHANGE_S;
  }
}
