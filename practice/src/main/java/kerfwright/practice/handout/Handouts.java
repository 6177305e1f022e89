package kerfwright.practice.handout;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Where handouts are kept. */
public interface Handouts {
  /**
   * Keeps a version of a handout.
   *
   * @return false where somebody else kept that version first, and nothing is kept
   */
  boolean keep(Handout version);

  /** The newest version. */
  Optional<Handout> find(UUID id);

  /** The newest versions of all, newest first, so many at most. */
  List<Handout> newest(int most);
}
