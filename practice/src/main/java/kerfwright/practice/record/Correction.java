package kerfwright.practice.record;

import java.util.UUID;

/**
 * What a correcting entry does to an earlier one, which stays as it is.
 *
 * @param corrects the earlier entry
 * @param struck true where that use did not take place at all; else the new entry says what did
 * @param by initials of who corrects
 * @param reason why, in their words
 */
public record Correction(UUID corrects, boolean struck, String by, String reason) {
  public Correction {
    if (reason.isBlank() || reason.length() > 400 || !CutUse.areInitials(by)) {
      throw new IllegalArgumentException(
          "A correction needs initials and a reason of up to 400 letters");
    }
  }
}
