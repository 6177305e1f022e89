package kerfwright.catalogue.number;

import kerfwright.catalogue.Provenance;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/**
 * One group of a number explained.
 *
 * @param role what the group is about
 * @param digits the digits as written
 * @param known whether the catalogue knows the group
 * @param meaning in words; for an unknown group, that it is unknown and what little is known
 * @param provenance standing of the meaning, or null for an unknown group
 */
public record NumberGroup(
    Role role, String digits, boolean known, String meaning, @Nullable Provenance provenance) {
  /** The groups of the number in their order. */
  public enum Role implements Identified {
    MATERIAL,
    SHANK,
    SHAPE,
    CHARACTERISTIC,
    SIZE,
    EXTENSION
  }

  static NumberGroup known(Role role, String digits, String meaning, Provenance provenance) {
    return new NumberGroup(role, digits, true, meaning, provenance);
  }

  static NumberGroup unknown(Role role, String digits, String what) {
    return new NumberGroup(role, digits, false, "unknown" + what, null);
  }
}
