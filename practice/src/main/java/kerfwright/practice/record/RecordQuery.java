package kerfwright.practice.record;

import java.time.Instant;
import java.util.UUID;
import kerfwright.catalogue.tooth.Tooth;
import org.jspecify.annotations.Nullable;

/**
 * Which entries to list, the last written first: a clock may have been wrong, the number is not.
 * Null asks for any.
 *
 * @param caseReference of this case, letters large or small
 * @param tooth on this tooth
 * @param instrument with this instrument, or in this handpiece
 * @param load with instruments or a handpiece out of this load
 * @param from cut at or after
 * @param until cut before
 * @param older only what was written before the entry with this number, the last of the page before
 * @param size how many, up to 500
 */
public record RecordQuery(
    @Nullable String caseReference,
    @Nullable Tooth tooth,
    @Nullable UUID instrument,
    @Nullable UUID load,
    @Nullable Instant from,
    @Nullable Instant until,
    @Nullable Long older,
    int size) {
  public RecordQuery {
    if (size < 1 || size > 500) {
      throw new IllegalArgumentException("size " + size);
    }
  }

  public static RecordQuery ofCase(String reference, int size) {
    return new RecordQuery(reference, null, null, null, null, null, null, size);
  }

  public static RecordQuery ofInstrument(UUID instrument, int size) {
    return new RecordQuery(null, null, instrument, null, null, null, null, size);
  }

  public static RecordQuery ofLoad(UUID load, int size) {
    return new RecordQuery(null, null, null, load, null, null, null, size);
  }

  public static RecordQuery newest(int size) {
    return new RecordQuery(null, null, null, null, null, null, null, size);
  }

  /** The page after the one that ends with this entry. */
  public RecordQuery after(RecordEntry last) {
    return new RecordQuery(
        caseReference, tooth, instrument, load, from, until, last.number(), size);
  }
}
