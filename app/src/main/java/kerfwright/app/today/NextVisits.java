package kerfwright.app.today;

import java.util.List;
import kerfwright.app.words.Say;

/** Tells the next appointments of the day, soonest first; empty where no day list is kept. */
@FunctionalInterface
public interface NextVisits {
  List<Visit> next(Say say);
}
