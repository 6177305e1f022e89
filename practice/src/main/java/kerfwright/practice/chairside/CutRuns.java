package kerfwright.practice.chairside;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Where runs are kept. */
public interface CutRuns {
  /** Keeps a new run. */
  void begin(CutRun run);

  Optional<CutRun> find(UUID id);

  /**
   * Keeps a run after a swap.
   *
   * @return false where somebody else changed it meanwhile, and nothing is kept
   */
  boolean change(CutRun next);

  /** The newest runs, newest first. */
  List<CutRun> newest(int most);
}
