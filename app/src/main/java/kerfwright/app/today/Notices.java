package kerfwright.app.today;

import java.util.List;
import kerfwright.app.words.Say;

/** A feature that may have something to say today; asked each time the page is opened. */
@FunctionalInterface
public interface Notices {
  /** What needs attention, empty where all is well. */
  List<Notice> today(Say say);
}
