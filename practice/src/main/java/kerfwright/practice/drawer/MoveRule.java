package kerfwright.practice.drawer;

import java.util.Optional;
import java.util.stream.Collectors;

/** Which moves are legal, and what else they change. */
final class MoveRule {
  private MoveRule() {}

  /** Why this item may not go there; empty where it may. */
  static Optional<String> against(StockItem item, InstrumentState to) {
    InstrumentState from = item.state();
    if (item.singleUse() && item.uses() > 0 && ready(to)) {
      return Optional.of("is for single use and was used: it cannot come back");
    }
    if (from.next(item.singleUse()).contains(to)) {
      return Optional.empty();
    }
    String choices =
        from.next(item.singleUse()).stream()
            .map(InstrumentState::label)
            .collect(Collectors.joining(", "));
    String single =
        item.singleUse() && from.next(false).contains(to)
            ? "is for single use and is never reprocessed"
            : "is " + from.label() + " and cannot become " + to.label();
    return Optional.of(
        single + (choices.isEmpty() ? "; it stays so" : "; from there it may become " + choices));
  }

  private static boolean ready(InstrumentState to) {
    return to == InstrumentState.CLEAN || to == InstrumentState.ON_TRAY;
  }

  /** The item after a legal move: a use is counted at the chair, a sterilisation on release. */
  static StockItem moved(StockItem item, InstrumentState to) {
    InstrumentState from = item.state();
    return item.next(
        draft -> {
          draft.state = to;
          if (to == InstrumentState.USED && ready(from)) {
            draft.uses++;
          }
          if (to == InstrumentState.CLEAN && from == InstrumentState.IN_LOAD) {
            draft.sterilisations++;
          }
        });
  }

  /** Pieces out of a lot, with its counts and place. */
  static StockItem partOf(StockItem lot, StockItem part, int pieces) {
    return new StockItem(
        part.id(),
        1,
        part.label(),
        pieces,
        lot.fields(),
        lot.properties(),
        lot.singleUse(),
        lot.place(),
        lot.price(),
        lot.uses(),
        lot.sterilisations(),
        lot.cutMm3ByMaterial(),
        lot.state(),
        false);
  }

  /** The item as it was before this line, one version on; a new item is removed. */
  static StockItem back(DrawerEntry entry) {
    StockItem now = entry.after();
    StockItem before = entry.before();
    if (before == null) {
      return now.next(draft -> draft.removed = true);
    }
    return new StockItem(
        now.id(),
        now.version() + 1,
        before.label(),
        before.pieces(),
        before.fields(),
        before.properties(),
        before.singleUse(),
        before.place(),
        before.price(),
        before.uses(),
        before.sterilisations(),
        before.cutMm3ByMaterial(),
        before.state(),
        before.removed());
  }
}
