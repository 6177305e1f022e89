package kerfwright.practice.label;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Where makers' codes of items are kept. */
public interface Packages {
  Optional<PackageMark> of(UUID item);

  /** Those of all items in the drawer with this trade item number, oldest first. */
  List<PackageMark> withGtin(String gtin);

  /** The last day of use of every item that has one. */
  Map<UUID, LocalDate> expiries();

  /**
   * Keeps a code for an item.
   *
   * @param version the version it is changed from, 0 where there was none
   * @return false when somebody else was quicker, and nothing is written
   */
  boolean put(UUID item, int version, MakersCode code);
}
