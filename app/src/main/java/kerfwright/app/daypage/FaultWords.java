package kerfwright.app.daypage;

import kerfwright.app.words.Say;
import kerfwright.practice.daylist.BookingFault;

/** Why a day list cannot be as it is, in the practice's language. */
final class FaultWords {
  private FaultWords() {}

  static String of(Say say, BookingFault fault) {
    return say.at(
        "day.fault-" + fault.kind().id(),
        fault.booking().id(),
        fault.other(),
        say.time(fault.booking().start()),
        say.time(fault.booking().end()));
  }
}
