package kerfwright.app.drawer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.app.feature.Notice;
import kerfwright.app.words.Say;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.InstrumentState;

/** What the drawer has to say today. */
final class DrawerNotices {
  private DrawerNotices() {}

  static List<Notice> of(Say say, Drawer drawer) {
    List<Notice> notices = new ArrayList<>();
    Map<InstrumentState, Integer> pieces = drawer.pieces();
    int all = pieces.values().stream().mapToInt(Integer::intValue).sum();
    if (all > 0 && pieces.getOrDefault(InstrumentState.CLEAN, 0) == 0) {
      notices.add(
          new Notice(
              true, say.at("today.none-clean"), "/drawer?state=used", say.at("today.see-used")));
    }
    int held = pieces.getOrDefault(InstrumentState.QUARANTINE, 0);
    if (held > 0) {
      notices.add(
          new Notice(
              false,
              say.at("today.quarantine", held),
              "/drawer?state=quarantine",
              say.at("today.decide")));
    }
    return notices;
  }
}
