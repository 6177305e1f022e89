package kerfwright.planner;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is fixed before a plan is made: the first steps, because they are done or because somebody
 * chose the instrument, and instruments that are no longer at hand for what follows.
 *
 * @param taken instrument and handpiece of the first steps, in order
 * @param out ids of instruments not to be planned with after those
 */
public record FixedSteps(List<Taken> taken, Set<String> out) {
  /** Nothing is fixed. */
  public static final FixedSteps NOTHING = new FixedSteps(List.of(), Set.of());

  /**
   * One fixed step.
   *
   * @param instrument id of the instrument
   * @param handpiece id of the handpiece
   */
  public record Taken(String instrument, String handpiece) {}

  public FixedSteps {
    taken = List.copyOf(taken);
    out = Set.copyOf(out);
  }

  /** What is taken for a step, 0 for the first. */
  Optional<Taken> at(int index) {
    return index < taken.size() ? Optional.of(taken.get(index)) : Optional.empty();
  }
}
