package kerfwright.planner.sequence;

import kerfwright.planner.choice.Candidate;
import kerfwright.planner.choice.Exclusion;
import org.jspecify.annotations.Nullable;

/**
 * What came of trying one operating point.
 *
 * @param candidate what it does, null where something forbids it
 * @param exclusion what forbids it, null where nothing does
 */
public record Tried(@Nullable Candidate candidate, @Nullable Exclusion exclusion) {
  static Tried not(Exclusion why) {
    return new Tried(null, why);
  }
}
