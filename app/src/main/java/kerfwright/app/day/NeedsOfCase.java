package kerfwright.app.day;

import java.util.List;
import kerfwright.app.input.BadInput;

/** Tells which instrument types the plan of a case needs, for {@code case: FILE} in a day file. */
@FunctionalInterface
public interface NeedsOfCase {
  /**
   * Needs of one case.
   *
   * @param caseFile the file as the day file names it
   */
  List<String> of(String caseFile) throws BadInput;
}
