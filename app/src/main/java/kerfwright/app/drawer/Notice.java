package kerfwright.app.drawer;

import java.util.List;
import java.util.UUID;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.Obstacle;
import org.jspecify.annotations.Nullable;

/**
 * What is told above a page after a change.
 *
 * @param words what was done, or that nothing was
 * @param batch the change, where it can be taken back; else null
 * @param obstacles why nothing was done
 */
public record Notice(String words, @Nullable UUID batch, List<Obstacle> obstacles) {
  static final Notice NONE = new Notice("", null, List.of());

  static Notice done(List<DrawerEntry> entries, boolean undone) {
    if (entries.isEmpty()) {
      return NONE;
    }
    DrawerEntry first = entries.get(0);
    String who = entries.size() == 1 ? first.after().label() : entries.size() + " instruments";
    String what =
        switch (first.what()) {
          case ADDED -> "put into the drawer";
          case MOVED -> "now " + first.after().state().label();
          case EDITED -> "changed";
          case SPLIT -> "taken out of the lot";
          case RECORDED -> "changed by the cut record";
          case LOADED -> "put into a load";
          case RELEASED -> "released with its load";
          case RECALLED -> "recalled with its load";
          case UNDONE -> "as before: the change was taken back";
        };
    String words = who + ": " + what + (undone ? ", and taken back since." : ".");
    return new Notice(words, undone ? null : first.batch(), List.of());
  }

  static Notice refused(List<Obstacle> obstacles) {
    return new Notice("Nothing was changed.", null, obstacles);
  }

  public boolean any() {
    return !words.isEmpty();
  }
}
