package kerfwright.app.reprocessing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import org.jspecify.annotations.Nullable;

/**
 * What the plan of the day wants in the next load.
 *
 * @param items those the drawer knows
 */
public record Wanted(List<StockItem> items) {
  private static final int MOST = 200;

  public Wanted {
    items = List.copyOf(items);
  }

  /** Reads labels with commas between; what is none in the drawer is left out. */
  static Wanted of(@Nullable String labels, Drawer drawer) {
    List<StockItem> items = new ArrayList<>();
    if (labels != null) {
      Arrays.stream(labels.split(","))
          .map(String::strip)
          .distinct()
          .limit(MOST)
          .map(label -> drawer.labelled(label).orElse(null))
          .filter(Objects::nonNull)
          .forEach(items::add);
    }
    return new Wanted(items);
  }

  boolean any() {
    return !items.isEmpty();
  }

  boolean holds(StockItem item) {
    return items.stream().anyMatch(one -> one.id().equals(item.id()));
  }

  /** Those that cannot go into a load yet, because they are not being cleaned. */
  public List<StockItem> absent() {
    return items.stream().filter(one -> one.state() != InstrumentState.CLEANING).toList();
  }
}
