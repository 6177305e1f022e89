package kerfwright.app.today;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.app.words.Say;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.InstrumentState;

/** What the drawer has to say today. */
public final class DrawerMatters implements Matters {
  private final Drawer drawer;

  public DrawerMatters(Drawer drawer) {
    this.drawer = drawer;
  }

  @Override
  public List<Matter> today(Say say) {
    List<Matter> matters = new ArrayList<>();
    Map<InstrumentState, Integer> pieces = drawer.pieces();
    int all = pieces.values().stream().mapToInt(Integer::intValue).sum();
    if (all > 0 && pieces.getOrDefault(InstrumentState.CLEAN, 0) == 0) {
      matters.add(
          new Matter(
              true, say.at("today.none-clean"), "/drawer?state=used", say.at("today.see-used")));
    }
    int held = pieces.getOrDefault(InstrumentState.QUARANTINE, 0);
    if (held > 0) {
      matters.add(
          new Matter(
              false,
              say.at("today.quarantine", held),
              "/drawer?state=quarantine",
              say.at("today.decide")));
    }
    return matters;
  }
}
