package kerfwright.app.drawer;

import java.util.Set;
import java.util.stream.Collectors;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Obstacle;
import kerfwright.practice.drawer.Refusal;

/** Why the drawer refuses a change, in a sentence. */
public final class RefusalWords {
  private RefusalWords() {}

  public static MoveNotice.Line line(Say say, Obstacle obstacle) {
    return new MoveNotice.Line(obstacle.label(), sentence(say, obstacle.why()));
  }

  public static String sentence(Say say, Refusal why) {
    if (why instanceof Refusal.NoWay way) {
      return noWay(say, way);
    }
    if (why instanceof Refusal.Pieces pieces) {
      return say.at("drawer.refused-pieces", pieces.held(), pieces.held() - 1);
    }
    if (why instanceof Refusal.OnOtherTray other) {
      return say.at("drawer.refused-on-other-tray", other.appointment());
    }
    return plain(say, (Refusal.Plain) why);
  }

  private static String plain(Say say, Refusal.Plain why) {
    return switch (why) {
      case LABEL_TAKEN -> say.at("drawer.refused-label-taken");
      case CHANGED_MEANWHILE -> say.at("drawer.refused-changed-meanwhile");
      case CHANGED_SINCE -> say.at("drawer.refused-changed-since");
      case GONE -> say.at("drawer.refused-gone");
      case CHANGE_UNKNOWN -> say.at("drawer.refused-change-unknown");
      case NOTHING_PICKED -> say.at("drawer.refused-nothing-picked");
      case USED_UP -> say.at("drawer.refused-used-up");
      case STAYS_SINGLE_USE -> say.at("drawer.refused-stays-single-use");
      case LOAD_RELEASES -> say.at("drawer.refused-load-releases");
      case LOAD_TAKES -> say.at("drawer.refused-load-takes");
      case BY_RECORD -> say.at("drawer.refused-by-record");
      case BY_LOAD -> say.at("drawer.refused-by-load");
      case NEEDS_REPROCESSING -> say.at("drawer.refused-needs-reprocessing");
    };
  }

  private static String noWay(Say say, Refusal.NoWay way) {
    String what =
        way.singleUse()
            ? say.at("drawer.refused-never-reprocessed")
            : say.at(
                "drawer.refused-no-way",
                Labels.state(say, way.from()),
                Labels.state(say, way.to()));
    Set<InstrumentState> possible = way.possible();
    return possible.isEmpty()
        ? say.at("drawer.refused-it-stays", what)
        : say.at("drawer.refused-but-possible", what, states(say, possible));
  }

  private static String states(Say say, Set<InstrumentState> states) {
    return states.stream()
        .sorted()
        .map(state -> Labels.state(say, state))
        .collect(Collectors.joining(", "));
  }
}
