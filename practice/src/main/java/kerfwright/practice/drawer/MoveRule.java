package kerfwright.practice.drawer;

import java.util.Optional;
import java.util.Set;

/** Which moves are legal, and what else they change. */
final class MoveRule {
  private MoveRule() {}

  /** Why this item may not go there; empty where it may. */
  static Optional<Refusal> against(StockItem item, InstrumentState to) {
    InstrumentState from = item.state();
    if (item.singleUse() && item.uses() > 0 && to.ready()) {
      return Optional.of(Refusal.Plain.USED_UP);
    }
    Set<InstrumentState> possible = from.next(item.singleUse());
    if (possible.contains(to)) {
      return Optional.empty();
    }
    boolean single = item.singleUse() && from.next(false).contains(to);
    return Optional.of(new Refusal.NoWay(from, to, single, possible));
  }

  /** Why someone may not move this item there by hand; empty where they may. */
  static Optional<Refusal> againstByHand(StockItem item, InstrumentState to) {
    Optional<Refusal> against = against(item, to);
    if (against.isPresent() || item.state().byHand(item.singleUse()).contains(to)) {
      return against;
    }
    return Optional.of(
        to == InstrumentState.CLEAN ? Refusal.Plain.LOAD_RELEASES : Refusal.Plain.LOAD_TAKES);
  }

  /** Why this change of an item is not taken back; empty where it may be. */
  static Optional<Refusal> againstUndo(DrawerEntry entry, StockItem now, StockItem back) {
    return switch (entry.what()) {
      case RECORDED -> Optional.of(Refusal.Plain.BY_RECORD);
      case LOADED, RELEASED, RECALLED -> Optional.of(Refusal.Plain.BY_LOAD);
      default -> againstComingBack(now, back);
    };
  }

  private static Optional<Refusal> againstComingBack(StockItem now, StockItem back) {
    if (back.singleUse() && back.uses() < now.uses()) {
      return Optional.of(Refusal.Plain.USED_UP);
    }
    if (!back.removed() && back.state().ready() && back.uses() < now.uses()) {
      return Optional.of(Refusal.Plain.NEEDS_REPROCESSING);
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
        before.rotary(),
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
