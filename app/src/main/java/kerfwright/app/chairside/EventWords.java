package kerfwright.app.chairside;

import kerfwright.app.plan.Figures;
import kerfwright.app.words.Say;
import kerfwright.practice.chairside.RunEvent;

/** What happened in a run, in words. */
public final class EventWords {
  private EventWords() {}

  /** One line with its time and who told it. */
  public static String line(Say say, RunEvent event) {
    Double depth = event.depthMm();
    return say.at(
        "chairside.event-line",
        say.moment(event.at()),
        say.at(
            "chairside.event-" + event.what().id(),
            depth == null ? event.label() : Figures.plain(say, depth)),
        event.step(),
        event.by());
  }
}
