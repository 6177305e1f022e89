package kerfwright.app.reprocessing;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import kerfwright.app.feature.Notice;
import kerfwright.app.words.Say;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.Loads;
import kerfwright.practice.reprocessing.ReprocessingSetting;
import kerfwright.practice.reprocessing.SteriliserLock;
import kerfwright.practice.setting.Settings;

/** Sterilisers out of service, and loads that wait for someone to read and decide. */
record LoadNotices(Loads loads, Settings settings, Clock clock) {
  List<Notice> of(Say say) {
    Instant now = clock.instant();
    List<Notice> notices = new ArrayList<>();
    for (String name : ReprocessingSetting.of(settings.read()).sterilisers()) {
      SteriliserLock.of(loads, name)
          .ifPresent(
              lock ->
                  notices.add(
                      new Notice(
                          true,
                          say.at("reprocessing.matter-locked", name, lock.load().name()),
                          "/reprocessing/load/" + lock.load().id(),
                          say.at("reprocessing.matter-locked-do"))));
    }
    for (Load load : loads.running()) {
      if (!load.over().isAfter(now)) {
        notices.add(
            new Notice(
                true,
                say.at("reprocessing.matter", load.name()),
                "/reprocessing/load/" + load.id(),
                say.at("reprocessing.matter-do")));
      }
    }
    return notices;
  }
}
