package kerfwright.app.day;

import java.util.List;
import kerfwright.app.input.BadInput;
import kerfwright.schedule.Need;

/** Tells what the plan of a case needs, for {@code case: FILE} in a day file. */
@FunctionalInterface
public interface NeedsOfCase {
  /**
   * Needs of one case.
   *
   * @param caseFile the file as the day file names it
   */
  List<Need> of(String caseFile) throws BadInput;
}
