package kerfwright.app.drawer;

import java.util.List;
import java.util.UUID;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.Obstacle;
import kerfwright.practice.drawer.StockItem;
import org.jspecify.annotations.Nullable;

/**
 * What is told above a page after a change.
 *
 * @param words what was done, or that nothing was
 * @param batch the change, where it can be taken back; else null
 * @param lines why nothing was done
 */
public record MoveNotice(String words, @Nullable UUID batch, List<Line> lines) {
  /**
   * One reason.
   *
   * @param label the instrument it is about, empty where about none
   * @param words a sentence
   */
  public record Line(String label, String words) {}

  static final MoveNotice NONE = new MoveNotice("", null, List.of());

  static MoveNotice done(Say say, List<DrawerEntry> entries, boolean undone) {
    if (entries.isEmpty()) {
      return NONE;
    }
    DrawerEntry first = entries.get(0);
    StockItem item = first.after();
    String who = entries.size() == 1 ? item.label() : say.at("drawer.instruments", entries.size());
    String what =
        switch (first.what()) {
          case ADDED -> say.at("drawer.was-added");
          case MOVED -> say.at("drawer.was-moved", Labels.state(say, item.state()));
          case EDITED -> say.at("drawer.was-edited");
          case SPLIT -> say.at("drawer.was-split");
          case RECORDED -> say.at("drawer.was-recorded");
          case LOADED -> say.at("drawer.was-loaded");
          case RELEASED -> say.at("drawer.was-released");
          case RECALLED -> say.at("drawer.was-recalled");
          case UNDONE -> say.at("drawer.was-undone");
        };
    String words = say.at(undone ? "drawer.done-and-undone" : "drawer.done", who, what);
    return new MoveNotice(words, undone ? null : first.batch(), List.of());
  }

  static MoveNotice refused(Say say, List<Obstacle> obstacles) {
    return new MoveNotice(
        say.at("drawer.nothing-changed"),
        null,
        obstacles.stream().map(one -> RefusalWords.line(say, one)).toList());
  }

  /** Refused before any rule was asked. */
  static MoveNotice refused(Say say, String label, List<String> reasons) {
    return new MoveNotice(
        say.at("drawer.nothing-changed"),
        null,
        reasons.stream().map(one -> new Line(label, one)).toList());
  }

  public boolean any() {
    return !words.isEmpty();
  }
}
