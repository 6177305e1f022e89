package kerfwright.practice.drawer;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;

/** Where the stock is kept. Removed items are found by their id only. */
public interface Drawer {
  /** Items by label, one page of them. */
  DrawerPage list(DrawerQuery query);

  Optional<StockItem> find(UUID id);

  /** The item of that label; a removed one has none. */
  Optional<StockItem> labelled(String label);

  /** Those of these labels that are taken. */
  Set<String> taken(Collection<String> labels);

  /** All items in one state. */
  List<StockItem> in(InstrumentState state);

  /** Pieces by state; states without any are left out. */
  Map<InstrumentState, Integer> pieces();

  /** The history of one item, oldest first. */
  List<DrawerEntry> history(UUID item);

  /** What was changed in one go, in the order it was written. */
  List<DrawerEntry> batch(UUID batch);

  /** True where some line takes this batch back. */
  boolean undone(UUID batch);

  /** Grows with every change of the stock. */
  long revision();

  /**
   * Does all this in turn: meanwhile nobody else, in this process or another, writes to the stock,
   * to a load or to the record, so that what it reads still holds when it writes. What it wrote is
   * kept together at its end, and nothing of it where it throws.
   */
  <T> T inTurn(Supplier<T> all);

  /**
   * Writes all these lines and the items after them, or nothing. Returns only when they are safe
   * from the end of the process.
   *
   * @throws DrawerConflict when an item is not, or no longer, at the version before the change, or
   *     a label is taken
   */
  void write(List<DrawerEntry> entries) throws DrawerConflict;
}
