package kerfwright.practice.drawer;

import java.util.Optional;
import java.util.stream.Collectors;

/** Which moves are legal, and what else they change. */
final class MoveRule {
  private MoveRule() {}

  /** Why this item may not go there; empty where it may. */
  static Optional<String> against(StockItem item, InstrumentState to) {
    InstrumentState from = item.state();
    if (item.singleUse() && item.uses() > 0 && to.ready()) {
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

  /** Why someone may not move this item there by hand; empty where they may. */
  static Optional<String> againstByHand(StockItem item, InstrumentState to) {
    Optional<String> against = against(item, to);
    if (against.isPresent() || item.state().byHand(item.singleUse()).contains(to)) {
      return against;
    }
    return Optional.of(
        to == InstrumentState.CLEAN
            ? "is in a load: it becomes clean when that load is released"
            : "goes into a load when the load is made");
  }

  /** Why this change of an item is not taken back; empty where it may be. */
  static Optional<String> againstUndo(DrawerEntry entry, StockItem now, StockItem back) {
    return switch (entry.what()) {
      case RECORDED -> Optional.of("was changed by the cut record: correct the entry there");
      case LOADED, RELEASED, RECALLED ->
          Optional.of("was moved by its steriliser load: the load decides");
      default -> againstComingBack(now, back);
    };
  }

  private static Optional<String> againstComingBack(StockItem now, StockItem back) {
    if (back.singleUse() && back.uses() < now.uses()) {
      return Optional.of("is for single use and was marked used: it cannot come back");
    }
    if (!back.removed() && back.state().ready() && back.uses() < now.uses()) {
      return Optional.of(
          "was marked used: it becomes clean again through cleaning and a released load alone");
    }
    return Optional.empty();
  }

  /** The item after a legal move: a use is counted at the chair, a sterilisation on release. */
  static StockItem moved(StockItem item, InstrumentState to) {
    InstrumentState from = item.state();
    return item.next(
        draft -> {
          draft.state = to;
          if (to == InstrumentState.USED && from.ready()) {
            draft.uses++;
          }
          if (to == InstrumentState.CLEAN && from == InstrumentState.IN_LOAD) {
            draft.sterilisations++;
          }
        });
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
