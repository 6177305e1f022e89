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
public record Attempt(@Nullable Candidate candidate, @Nullable Exclusion exclusion) {
  static Attempt not(Exclusion why) {
    return new Attempt(null, why);
  }

  static Attempt not(String code, Object... values) {
    return not(Exclusion.of(code, values));
  }
}
