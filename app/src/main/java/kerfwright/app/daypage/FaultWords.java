package kerfwright.app.daypage;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.words.Say;
import kerfwright.practice.daylist.BookingFault;

/** Why a day list cannot be as it is, in the practice's language. */
final class FaultWords {
  private FaultWords() {}

  static List<String> of(Say say, List<BookingFault> faults) {
    List<String> words = new ArrayList<>();
    for (BookingFault fault : faults) {
      words.add(
          say.at(
              "day.fault-" + fault.kind().id(),
              fault.booking().id(),
              fault.other(),
              say.time(fault.booking().start()),
              say.time(fault.booking().end())));
    }
    return words;
  }

  static List<String> of(Say say, DayService.Effect effect) {
    return effect.factsBroken() ? List.of(say.at("day.fault-happened")) : of(say, effect.faults());
  }
}
