package kerfwright.practice.record;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Where a sterile instrument came from, as far as known.
 *
 * @param load the steriliser load, or null
 * @param loadName its name, empty where there is none
 * @param pouch code of the pouch, may be empty
 * @param lot the maker's lot, may be empty
 */
public record Origin(@Nullable UUID load, String loadName, String pouch, String lot) {
  public static final Origin UNKNOWN = new Origin(null, "", "", "");

  public Origin {
    if (loadName.length() > 60 || pouch.length() > 60 || lot.length() > 60) {
      throw new IllegalArgumentException("Names of load, pouch and lot have up to 60 letters");
    }
  }
}
