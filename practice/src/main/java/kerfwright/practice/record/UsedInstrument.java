package kerfwright.practice.record;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The instrument as it was known when it was used.
 *
 * @param id its item in the drawer
 * @param label what the practice called it
 * @param what its number or size
 * @param pieceOf the counted lot it was taken out of for this use, or null
 */
public record UsedInstrument(UUID id, String label, String what, @Nullable UUID pieceOf) {
  /** True where it is this item, or was one piece of it. */
  boolean stoodFor(UUID item) {
    return item.equals(id) || item.equals(pieceOf);
  }
}
