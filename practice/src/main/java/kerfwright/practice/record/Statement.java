package kerfwright.practice.record;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What is to be written: an entry that has no place in the chain yet.
 *
 * @param id made by whoever states it; the same statement sent twice is written once
 * @param use what was done
 * @param correction what it corrects, or null
 * @param remarks what should not have been so
 */
public record Statement(
    UUID id, CutUse use, @Nullable Correction correction, List<Remark> remarks) {
  public Statement {
    remarks = List.copyOf(remarks);
  }
}
