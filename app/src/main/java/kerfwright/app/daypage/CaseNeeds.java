package kerfwright.app.daypage;

import java.util.List;
import kerfwright.app.input.BadInput;
import kerfwright.practice.daylist.PieceNeed;
import kerfwright.schedule.Need;

/** Plans a case written as a case file and tells what its tray needs. */
@FunctionalInterface
public interface CaseNeeds {
  /** What a case needs: rotary instruments, and the pieces beside them. */
  record Asked(List<Need> needs, List<PieceNeed> pieces) {}

  /**
   * Needs of a case.
   *
   * @throws BadInput with every fault of the text, or the reason of a refusal
   */
  Asked of(String caseText) throws BadInput;
}
