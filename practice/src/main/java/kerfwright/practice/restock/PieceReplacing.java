package kerfwright.practice.restock;

import static java.util.stream.Collectors.toSet;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import kerfwright.catalogue.piece.PieceKinds;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;

/**
 * Handpieces, hand instruments and tips to buy. They have no wear model, so nothing is reckoned
 * ahead: what was withdrawn, broken or not whole counts from the day it left, and each piece that
 * came in later stands in for one of them. A piece on its way out, in quarantine, is still here.
 */
final class PieceReplacing {
  private static final int SHOWN_LABELS = 6;

  private final Instant from;
  private final Function<UUID, List<DrawerEntry>> history;

  /**
   * @param history the lines of an item, oldest first
   */
  PieceReplacing(Instant from, Function<UUID, List<DrawerEntry>> history) {
    this.from = from;
    this.history = history;
  }

  /** A number of pieces that came, or left where it is negative. */
  private record Turn(Instant at, int pieces) {}

  /** By kind, those of which most are missing first; then what is of no kind. */
  List<PieceNeed> needs(List<StockItem> items, List<PurchaseRequest> requests) {
    Map<String, List<StockItem>> byKind = new TreeMap<>();
    for (StockItem item : items) {
      if (!item.removed()) {
        item.pieceKind()
            .ifPresent(
                kind -> byKind.computeIfAbsent(kind.id(), any -> new ArrayList<>()).add(item));
      }
    }
    requests.forEach(
        wish ->
            PieceKinds.byId(wish.type())
                .ifPresent(kind -> byKind.computeIfAbsent(kind.id(), any -> new ArrayList<>())));
    List<PieceNeed> needs = new ArrayList<>();
    byKind.forEach(
        (id, its) -> {
          List<PurchaseRequest> wishes =
              requests.stream().filter(wish -> wish.type().equals(id)).toList();
          PieceNeed need = need(id, its, wishes);
          if (need.order() > 0) {
            needs.add(need);
          }
        });
    needs.sort(Comparator.comparing(need -> -need.order()));
    requests.stream()
        .filter(wish -> PieceKinds.byId(wish.type()).isEmpty())
        .map(PieceNeed::unplaced)
        .forEach(needs::add);
    return needs;
  }

  private PieceNeed need(String kind, List<StockItem> items, List<PurchaseRequest> wishes) {
    List<StockItem> withdrawn =
        items.stream().filter(item -> item.state() == InstrumentState.WITHDRAWN).toList();
    int here = pieces(items) - pieces(withdrawn);
    List<String> gone = new ArrayList<>();
    List<Turn> turns = new ArrayList<>();
    int left = 0;
    for (StockItem item : withdrawn) {
      for (Instant at : left(item)) {
        turns.add(new Turn(at, -item.pieces()));
        left += item.pieces();
        if (gone.size() < SHOWN_LABELS) {
          gone.add(item.label());
        }
      }
    }
    int missing = left == 0 ? 0 : missing(turns, items);
    int wished = wishes.stream().mapToInt(PurchaseRequest::pieces).max().orElse(0);
    return new PieceNeed(
        kind,
        gone,
        left,
        left - missing,
        here,
        Math.max(missing, wished),
        Restocking.price(items),
        wishes);
  }

  /** Those that left and were not replaced: what came before one left does not stand in for it. */
  private int missing(List<Turn> left, List<StockItem> items) {
    List<Turn> turns = new ArrayList<>(left);
    for (StockItem item : items) {
      List<DrawerEntry> lines = history.apply(item.id());
      Set<UUID> takenBack =
          lines.stream().map(DrawerEntry::undoes).filter(Objects::nonNull).collect(toSet());
      for (DrawerEntry line : lines) {
        int more = takenBack.contains(line.batch()) ? 0 : more(line);
        if (more > 0 && !line.at().isBefore(from)) {
          turns.add(new Turn(line.at(), more));
        }
      }
    }
    turns.sort(Comparator.comparing(Turn::at));
    int missing = 0;
    for (Turn turn : turns) {
      missing = Math.max(0, missing - turn.pieces());
    }
    return missing;
  }

  /** Pieces that came in; out of a lot none does. */
  private static int more(DrawerEntry line) {
    StockItem before = line.before();
    return switch (line.what()) {
      case ADDED -> before == null ? line.after().pieces() : 0;
      case EDITED -> before == null ? 0 : line.after().pieces() - before.pieces();
      default -> 0;
    };
  }

  /** When it left, where that was within the weeks looked at: the last time, of several. */
  private List<Instant> left(StockItem item) {
    return history.apply(item.id()).stream()
        .filter(
            entry ->
                entry.before() != null
                    && entry.before().state() != InstrumentState.WITHDRAWN
                    && entry.after().state() == InstrumentState.WITHDRAWN)
        .map(DrawerEntry::at)
        .reduce((earlier, later) -> later)
        .filter(at -> !at.isBefore(from))
        .stream()
        .toList();
  }

  private static int pieces(List<StockItem> items) {
    return items.stream().mapToInt(StockItem::pieces).sum();
  }
}
