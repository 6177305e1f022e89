package kerfwright.practice.record;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.StockItem;
import org.jspecify.annotations.Nullable;

/**
 * The one physical piece a report means. A counted lot gives off one piece, which becomes an item
 * of its own; a later step of the same plan goes on with the same piece.
 *
 * @param piece the instrument or handpiece
 * @param pieceOf the lot it comes from, or null
 * @param rest the lot without it where it is given off now, else null
 */
record PieceOfLot(StockItem piece, @Nullable UUID pieceOf, @Nullable StockItem rest) {
  private static final int LONGEST_LABEL = 40;

  static PieceOfLot of(
      StockItem item, UseReport report, CutRecord record, Drawer drawer, UUID newId) {
    PlanStep step = report.step();
    if (step != null) {
      // asked for the last piece of a lot too: the lot is that piece now, or was it before
      Optional<StockItem> before =
          record.list(RecordQuery.ofCase(report.caseReference(), 200)).stream()
              .filter(one -> sameWork(one.use(), step.plan()))
              .flatMap(one -> one.use().pieces().stream())
              .map(CutUse.Piece::used)
              .filter(one -> item.id().equals(one.pieceOf()))
              .findFirst()
              .flatMap(one -> drawer.find(one.id()));
      if (before.isPresent()) {
        return new PieceOfLot(before.get(), item.id(), null);
      }
    }
    if (!item.lot()) {
      return new PieceOfLot(item, null, null);
    }
    StockItem piece = item.part(newId, freeLabel(item.label(), drawer), 1);
    return new PieceOfLot(piece, item.id(), item.next(rest -> rest.pieces = item.pieces() - 1));
  }

  private static boolean sameWork(CutUse use, String plan) {
    PlanStep step = use.step();
    return step != null && step.plan().equals(plan);
  }

  /** The lot's label, a full stop, and the first free number. */
  private static String freeLabel(String lot, Drawer drawer) {
    String stem = lot.substring(0, Math.min(lot.length(), LONGEST_LABEL - 7));
    for (int from = 1; ; from += 100) {
      List<String> some = new ArrayList<>();
      for (int i = from; i < from + 100; i++) {
        some.add(stem + "." + i);
      }
      Set<String> taken = new HashSet<>(drawer.taken(some));
      for (String one : some) {
        if (!taken.contains(one)) {
          return one;
        }
      }
    }
  }
}
