package kerfwright.practice.record;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/** Tells which steriliser load an instrument came out of. */
public interface Origins {
  /** Nothing is known of any load. */
  Origins NONE =
      new Origins() {
        @Override
        public Optional<Pouched> lastOf(UUID item, Instant before) {
          return Optional.empty();
        }

        @Override
        public Optional<Pouched> pouch(String code, UUID item) {
          return Optional.empty();
        }
      };

  /** The newest pouch this item was put into whose load was started before that time. */
  Optional<Pouched> lastOf(UUID item, Instant before);

  /** The pouch of that code, letters large or small. */
  Optional<Pouched> pouch(String code, UUID item);

  /** How a load stands. */
  enum Standing implements Identified {
    RUNNING,
    RELEASED,
    FAILED
  }

  /**
   * A pouch and its load.
   *
   * @param load the load
   * @param loadName its name
   * @param pouch code of the pouch
   * @param standing how the load stands
   * @param decided when it was released or failed, or null
   * @param lastDay last day of its shelf life, null where that is by event
   * @param holds true where the item asked about is among the contents
   */
  record Pouched(
      UUID load,
      String loadName,
      String pouch,
      Standing standing,
      @Nullable Instant decided,
      @Nullable LocalDate lastDay,
      boolean holds) {}
}
