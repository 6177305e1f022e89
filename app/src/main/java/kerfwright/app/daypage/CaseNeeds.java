package kerfwright.app.daypage;

import java.util.List;
import kerfwright.app.input.BadInput;
import kerfwright.schedule.Need;

/** Plans a case written as a case file and tells what its tray needs. */
@FunctionalInterface
public interface CaseNeeds {
  /**
   * Needs of a case.
   *
   * @throws BadInput with every fault of the text, or the reason of a refusal
   */
  List<Need> of(String caseText) throws BadInput;
}
