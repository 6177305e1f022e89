package kerfwright.app.reprocessing;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import kerfwright.app.today.Matter;
import kerfwright.app.today.Matters;
import kerfwright.app.words.Say;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.Loads;

/** Loads that wait for someone to read and decide. */
public record LoadMatters(Loads loads, Clock clock) implements Matters {
  @Override
  public List<Matter> today(Say say) {
    Instant now = clock.instant();
    List<Matter> matters = new ArrayList<>();
    for (Load load : loads.running()) {
      if (!load.over().isAfter(now)) {
        matters.add(
            new Matter(
                true,
                say.at("reprocessing.matter", load.name()),
                "/reprocessing/load/" + load.id(),
                say.at("reprocessing.matter-do")));
      }
    }
    return matters;
  }
}
