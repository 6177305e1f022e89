package kerfwright.practice.chairside;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.catalogue.tooth.Tooth;

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

  /** The runs of a case on a tooth, newest first. */
  List<CutRun> of(String caseReference, Tooth tooth);

  /** The newest runs, newest first. */
  List<CutRun> newest(int most);

  /**
   * Keeps what happened in a run.
   *
   * @return false where it stood there already, and nothing is kept
   */
  boolean add(RunEvent event);

  /** What happened in a run, in the order it was told. */
  List<RunEvent> events(UUID run);
}
