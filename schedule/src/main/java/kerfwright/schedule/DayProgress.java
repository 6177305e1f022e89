package kerfwright.schedule;

/** Told of each better plan while the search runs; may stop it, and then the best is kept. */
public interface DayProgress {
  /** Listens to nothing and never stops. */
  DayProgress NONE = plan -> {};

  /** A better plan, with values and the bounds known so far; the first comes at once. */
  void better(DayPlan plan);

  /** A better bound of a goal. */
  default void bound(Goal goal, int bound) {}

  /** Asked several times a second. */
  default boolean stopped() {
    return false;
  }
}
