package kerfwright.practice.reprocessing;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What is wrapped together: one instrument or a set.
 *
 * @param id time-ordered, on its label
 * @param code for people: the load's name, a full stop, its number
 * @param set name of the set, empty for single instruments
 * @param contents the instruments
 * @param lastDay last day of its shelf life, null where only an event ends it
 */
public record Pouch(
    UUID id, String code, String set, List<Content> contents, @Nullable LocalDate lastDay) {
  /**
   * An instrument as it was put in.
   *
   * @param item its item in the drawer
   * @param label what it was called
   */
  public record Content(UUID item, String label) {}

  public Pouch {
    contents = List.copyOf(contents);
    if (contents.isEmpty() || set.length() > 40) {
      throw new IllegalArgumentException("A pouch holds something, and its name has 40 letters");
    }
  }
}
