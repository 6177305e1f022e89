package kerfwright.practice.drawer;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Changes the stock by the rules: every change is whole, leaves a line of history, and can be
 * undone.
 */
public final class DrawerService {
  private final Drawer drawer;
  private final TimeOrderedIds ids;
  private final Clock clock;

  public DrawerService(Drawer drawer, TimeOrderedIds ids, Clock clock) {
    this.drawer = drawer;
    this.ids = ids;
    this.clock = clock;
  }

  public Drawer drawer() {
    return drawer;
  }

  /** A fresh id, for an item about to be added. */
  public UUID newId() {
    return ids.next();
  }

  /** Puts new items into the drawer. */
  public Outcome add(List<StockItem> items, String note) {
    List<Obstacle> obstacles = new ArrayList<>();
    Set<String> taken = drawer.taken(items.stream().map(StockItem::label).toList());
    Set<String> seen = new HashSet<>();
    for (StockItem item : items) {
      if (taken.contains(item.label()) || !seen.add(item.label())) {
        obstacles.add(new Obstacle(null, item.label(), Refusal.Plain.LABEL_TAKEN));
      }
    }
    Lines lines = new Lines(note, null);
    items.forEach(item -> lines.add(DrawerEntry.What.ADDED, null, item));
    return write(lines, obstacles);
  }

  /** Moves items on in their round by hand: a move no rule allows stops them all. */
  public Outcome move(List<Pick> picks, InstrumentState to, String note) {
    List<Obstacle> obstacles = new ArrayList<>();
    Lines lines = new Lines(note, null);
    for (Pick pick : picks) {
      StockItem item = current(pick, obstacles);
      if (item == null) {
        continue;
      }
      Optional<Refusal> against = MoveRule.againstByHand(item, to);
      if (against.isPresent()) {
        obstacles.add(new Obstacle(item.id(), item.label(), against.get()));
      } else {
        lines.add(DrawerEntry.What.MOVED, item, MoveRule.moved(item, to));
      }
    }
    return write(lines, obstacles);
  }

  /** Changes what is written down about one item; its state is changed by {@link #move} alone. */
  public Outcome edit(Pick pick, Consumer<StockItem.Draft> change, String note) {
    List<Obstacle> obstacles = new ArrayList<>();
    Lines lines = new Lines(note, null);
    StockItem item = current(pick, obstacles);
    if (item != null) {
      StockItem after = item.next(change);
      if (after.state() != item.state() || after.removed() != item.removed()) {
        throw new IllegalArgumentException("An edit changes neither state nor presence");
      }
      boolean opened = item.uses() > 0 || item.state() == InstrumentState.USED;
      if (item.singleUse() && opened && !after.singleUse()) {
        obstacles.add(new Obstacle(item.id(), item.label(), Refusal.Plain.STAYS_SINGLE_USE));
      }
      if (!after.label().equals(item.label())
          && drawer.taken(List.of(after.label())).contains(after.label())) {
        obstacles.add(new Obstacle(item.id(), after.label(), Refusal.Plain.LABEL_TAKEN));
      }
      lines.add(DrawerEntry.What.EDITED, item, after);
    }
    return write(lines, obstacles);
  }

  /** Takes some pieces out of a lot as an item of their own. */
  public Outcome split(Pick pick, int pieces, String label) {
    List<Obstacle> obstacles = new ArrayList<>();
    Lines lines = new Lines("", null);
    StockItem item = current(pick, obstacles);
    if (item != null) {
      if (pieces < 1 || pieces >= item.pieces()) {
        obstacles.add(new Obstacle(item.id(), item.label(), new Refusal.Pieces(item.pieces())));
      } else if (!drawer.taken(List.of(label)).isEmpty()) {
        obstacles.add(new Obstacle(null, label, Refusal.Plain.LABEL_TAKEN));
      } else {
        lines.add(
            DrawerEntry.What.SPLIT, item, item.next(rest -> rest.pieces = item.pieces() - pieces));
        lines.add(DrawerEntry.What.SPLIT, null, item.part(ids.next(), label, pieces));
      }
    }
    return write(lines, obstacles);
  }

  /** Lays instruments on a tray: a single one is moved, of a lot one piece is taken out first. */
  public Outcome lay(List<Pick> picks, String note) {
    List<Obstacle> obstacles = new ArrayList<>();
    Lines lines = new Lines(note, null);
    for (Pick pick : picks) {
      StockItem item = current(pick, obstacles);
      if (item == null) {
        continue;
      }
      Optional<Refusal> against = MoveRule.againstByHand(item, InstrumentState.ON_TRAY);
      if (against.isPresent()) {
        obstacles.add(new Obstacle(item.id(), item.label(), against.get()));
      } else if (item.lot()) {
        lines.add(DrawerEntry.What.SPLIT, item, item.next(rest -> rest.pieces = item.pieces() - 1));
        StockItem one = item.part(ids.next(), freeLabel(item.label()), 1);
        lines.add(DrawerEntry.What.SPLIT, null, one.laid());
      } else {
        lines.add(DrawerEntry.What.MOVED, item, MoveRule.moved(item, InstrumentState.ON_TRAY));
      }
    }
    return write(lines, obstacles);
  }

  /** A label for a piece of a lot: the lot's own, a hyphen and the first number that is free. */
  private String freeLabel(String lot) {
    int room = StockItem.LONGEST_LABEL - 6;
    String stem = lot.substring(0, Math.min(room, lot.length())) + "-";
    int number = 1;
    while (!drawer.taken(List.of(stem + number)).isEmpty()) {
      number++;
    }
    return stem + number;
  }

  /** Takes a change back, whole, while nothing has happened to its items since. */
  public Outcome undo(UUID batch, String note) {
    List<Obstacle> obstacles = new ArrayList<>();
    List<DrawerEntry> done = drawer.batch(batch);
    if (done.isEmpty()) {
      return Outcome.refused(List.of(new Obstacle(null, "", Refusal.Plain.CHANGE_UNKNOWN)));
    }
    Lines lines = new Lines(note, batch);
    for (DrawerEntry entry : done) {
      StockItem now = drawer.find(entry.after().id()).orElseThrow();
      if (now.version() != entry.after().version()) {
        obstacles.add(new Obstacle(now.id(), now.label(), Refusal.Plain.CHANGED_SINCE));
        continue;
      }
      StockItem back = MoveRule.back(entry);
      MoveRule.againstUndo(entry, now, back)
          .ifPresent(reason -> obstacles.add(new Obstacle(now.id(), now.label(), reason)));
      lines.add(DrawerEntry.What.UNDONE, now, back);
    }
    return write(lines, obstacles);
  }

  private @Nullable StockItem current(Pick pick, List<Obstacle> obstacles) {
    StockItem item = drawer.find(pick.item()).orElse(null);
    if (item == null || item.removed()) {
      obstacles.add(new Obstacle(pick.item(), "", Refusal.Plain.GONE));
      return null;
    }
    if (item.version() != pick.version()) {
      obstacles.add(new Obstacle(item.id(), item.label(), Refusal.Plain.CHANGED_MEANWHILE));
      return null;
    }
    return item;
  }

  private Outcome write(Lines lines, List<Obstacle> obstacles) {
    if (obstacles.isEmpty() && lines.entries.isEmpty()) {
      return Outcome.refused(List.of(new Obstacle(null, "", Refusal.Plain.NOTHING_PICKED)));
    }
    if (!obstacles.isEmpty()) {
      return Outcome.refused(obstacles);
    }
    try {
      drawer.write(lines.entries);
      return new Outcome(lines.batch, List.of());
    } catch (DrawerConflict conflict) {
      String label =
          lines.entries.stream()
              .map(DrawerEntry::after)
              .filter(item -> item.id().equals(conflict.item()))
              .map(StockItem::label)
              .findFirst()
              .orElse("");
      Refusal why =
          conflict.kind() == DrawerConflict.Kind.LABEL_TAKEN
              ? Refusal.Plain.LABEL_TAKEN
              : Refusal.Plain.CHANGED_MEANWHILE;
      return Outcome.refused(List.of(new Obstacle(conflict.item(), label, why)));
    }
  }

  /** The lines of one change. */
  private final class Lines {
    private final UUID batch = ids.next();
    // as fine as every database keeps it
    private final Instant at = clock.instant().truncatedTo(java.time.temporal.ChronoUnit.MICROS);
    private final List<DrawerEntry> entries = new ArrayList<>();
    private final String note;
    private final @Nullable UUID undoes;

    Lines(String note, @Nullable UUID undoes) {
      this.note = note;
      this.undoes = undoes;
    }

    void add(DrawerEntry.What what, @Nullable StockItem before, StockItem after) {
      entries.add(new DrawerEntry(ids.next(), batch, at, what, note, before, after, undoes));
    }
  }
}
