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
    MATERIAL("material of the working part", "digits 1 to 3"),
    SHANK("shank and overall length", "digits 4 to 6"),
    SHAPE("shape", "digits 7 to 9"),
    CHARACTERISTIC("characteristic", "digits 10 to 12"),
    SIZE("size", "digits 13 to 15"),
    EXTENSION("optional group", "digits 16 to 18");

    private final String label;
    private final String place;

    Role(String label, String place) {
      this.label = label;
      this.place = place;
    }

    public String label() {
      return label;
    }

    public String place() {
      return place;
    }
  }

  static NumberGroup known(Role role, String digits, String meaning, Provenance provenance) {
    return new NumberGroup(role, digits, true, meaning, provenance);
  }

  static NumberGroup unknown(Role role, String digits, String what) {
    return new NumberGroup(role, digits, false, "unknown" + what, null);
  }
}
