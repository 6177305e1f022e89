package kerfwright.practice.kept;

import java.time.Instant;
import kerfwright.catalogue.tooth.Tooth;
import org.jspecify.annotations.Nullable;

/**
 * Which kept cases to list; null asks for any.
 *
 * @param reference part of the reference, letters large or small
 * @param tooth on this tooth
 * @param procedure id of the procedure
 * @param from kept at or after
 * @param until kept before
 * @param page 0 for the first
 * @param size how many on a page
 */
public record KeptCaseQuery(
    @Nullable String reference,
    @Nullable Tooth tooth,
    @Nullable String procedure,
    @Nullable Instant from,
    @Nullable Instant until,
    int page,
    int size) {
  public KeptCaseQuery {
    if (page < 0 || size < 1 || size > 500) {
      throw new IllegalArgumentException("page " + page + ", size " + size);
    }
  }

  /** The newest of all. */
  public static KeptCaseQuery newest(int size) {
    return new KeptCaseQuery(null, null, null, null, null, 0, size);
  }

  /** Those on a tooth of a case. */
  public static KeptCaseQuery of(String reference, Tooth tooth) {
    return new KeptCaseQuery(reference, tooth, null, null, null, 0, 50);
  }
}
