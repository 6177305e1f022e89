package kerfwright.practice.record;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One entry in its place.
 *
 * @param number its place in the chain, 1 for the first
 * @param recordedAt when it was written down, to the microsecond
 * @param statement what it says
 * @param hash see {@link Chain}
 */
public record RecordEntry(long number, Instant recordedAt, Statement statement, String hash) {
  public UUID id() {
    return statement.id();
  }

  public CutUse use() {
    return statement.use();
  }

  public @Nullable Correction correction() {
    return statement.correction();
  }

  public List<Remark> remarks() {
    return statement.remarks();
  }

  /** True where this entry only says that an earlier one did not take place. */
  public boolean strikes() {
    Correction correction = statement.correction();
    return correction != null && correction.struck();
  }
}
