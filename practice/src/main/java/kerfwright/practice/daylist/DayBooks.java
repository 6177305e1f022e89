package kerfwright.practice.daylist;

import java.time.LocalDate;
import java.util.List;

/** Where day lists and trays are kept. Every version of a day stays; a change adds one. */
public interface DayBooks {
  /** The newest version of a day; an empty one where nothing is written. */
  DayBook read(LocalDate date);

  /** An earlier version. */
  DayBook read(LocalDate date, int version);

  /**
   * Adds a version after the one the book was read at.
   *
   * @param what what was done, a stable code
   * @return false where somebody else was quicker, and nothing is written
   */
  boolean write(DayBook book, String what);

  /** Days with appointments before this one, newest first, at most so many. */
  List<LocalDate> before(LocalDate date, int most);

  /** The trays the practice uses again and again, by name. */
  List<TrayTemplate> trays();

  /** Keeps a tray under its name; one without needs is forgotten. */
  void keep(TrayTemplate tray);
}
