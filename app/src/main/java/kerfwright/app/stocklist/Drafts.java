package kerfwright.app.stocklist;

import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Lists handed in, waiting to be looked at. */
public interface Drafts {
  /**
   * One list.
   *
   * @param name name of its file
   * @param table what stands in it
   * @param batch the change that took it over, or null
   */
  record Draft(String name, ListTable table, @Nullable UUID batch) {}

  /** Keeps a list; the oldest ones make room. */
  void keep(UUID id, String name, ListTable table);

  Optional<Draft> find(UUID id);

  /** Notes that the list was taken over. */
  void takenOver(UUID id, UUID batch);
}
