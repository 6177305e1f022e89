package kerfwright.app.day;

import java.util.List;
import kerfwright.app.input.BadInput;

/** Tells which instrument types the plan of a case needs, for {@code case: FILE} in a day file. */
@FunctionalInterface
public interface NeedsOfCase {
  /** Refuses every case: the needs must be written out. */
  NeedsOfCase NONE =
      caseFile -> {
        throw new BadInput(
            caseFile, "the needs of a case file cannot be planned here; write them out as needs");
      };

  /**
   * Needs of one case.
   *
   * @param caseFile the file as the day file names it
   */
  List<String> of(String caseFile) throws BadInput;
}
