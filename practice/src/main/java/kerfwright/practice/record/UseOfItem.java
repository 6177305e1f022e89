package kerfwright.practice.record;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kerfwright.practice.drawer.DrawerEntry;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;

/**
 * What a use means for one item of the drawer. Reports may come late, so the item is judged as it
 * stood when it was used, within its round: from one release of a load to the next.
 *
 * <p>A round counts as many uses as there are cases it was used on, and at least as many as it was
 * marked used by hand. Until its round has ended an item that was used is never ready.
 */
final class UseOfItem {
  private final StockItem item;
  private final List<DrawerEntry> lines;
  private final List<RecordEntry> others;
  private final String caseKey;
  private final Instant at;
  private final ItemCycle round;

  /**
   * @param history the whole history of the item
   * @param round the one it was used in
   * @param entries entries of this round that hold, without the one judged
   */
  UseOfItem(
      StockItem item,
      List<DrawerEntry> history,
      ItemCycle round,
      List<RecordEntry> entries,
      String caseReference,
      Instant at) {
    this.item = item;
    this.round = round;
    // what the record itself moved bears the time it was written, not that of the use
    this.lines = history.stream().filter(one -> one.what() != DrawerEntry.What.RECORDED).toList();
    this.others = List.copyOf(entries);
    this.caseKey = key(caseReference);
    this.at = at;
  }

  private static String key(String caseReference) {
    return caseReference.toUpperCase(Locale.ROOT);
  }

  List<Remark> remarks() {
    List<Remark> remarks = new ArrayList<>();
    if (item.removed()) {
      remarks.add(Remark.of(Remark.Kind.NOT_IN_DRAWER));
    }
    InstrumentState then = stateThen();
    if (!then.ready() && then != InstrumentState.USED) {
      remarks.add(Remark.of(Remark.Kind.NOT_READY, then.id()));
    }
    Optional<RecordEntry> elsewhere =
        others.stream().filter(one -> !key(one.use().caseReference()).equals(caseKey)).findFirst();
    elsewhere.ifPresent(
        one -> remarks.add(Remark.of(Remark.Kind.ANOTHER_CASE, one.use().caseReference())));
    if (item.singleUse() && item.uses() > 0 && counted() > 0) {
      remarks.add(Remark.of(Remark.Kind.SINGLE_USE_AGAIN));
    }
    return remarks;
  }

  private InstrumentState stateThen() {
    return lines.stream()
        .filter(line -> !line.at().isAfter(at))
        .reduce((before, later) -> later)
        .or(() -> lines.stream().findFirst())
        .map(line -> line.after().state())
        .orElse(item.state());
  }

  /** How many uses this one adds: one, or none where its round counts it already. */
  private int counted() {
    Set<String> cases = new HashSet<>();
    others.forEach(one -> cases.add(key(one.use().caseReference())));
    int byHand =
        (int) lines.stream().filter(line -> round.holds(line.at())).filter(this::marksUsed).count();
    int before = Math.max(byHand, cases.size());
    cases.add(caseKey);
    return Math.max(byHand, cases.size()) - before;
  }

  private boolean marksUsed(DrawerEntry line) {
    StockItem before = line.before();
    return line.what() == DrawerEntry.What.MOVED
        && before != null
        && line.after().uses() > before.uses();
  }

  private InstrumentState stateNow() {
    InstrumentState now = item.state();
    if (round.ended()) {
      return now;
    }
    if (now.ready()) {
      return InstrumentState.USED;
    }
    boolean movedSince = lines.stream().anyMatch(line -> line.at().isAfter(at) && moves(line));
    if (movedSince) {
      return now;
    }
    return switch (now) {
      // what is being cleaned starts over; a single-use one has no place there
      case CLEANING -> item.singleUse() ? InstrumentState.QUARANTINE : InstrumentState.USED;
      // it cannot have been in that load: the load is not what it seems
      case IN_LOAD -> InstrumentState.QUARANTINE;
      default -> now;
    };
  }

  private static boolean moves(DrawerEntry line) {
    StockItem before = line.before();
    return before != null && before.state() != line.after().state();
  }

  /** The item after the use. */
  StockItem after(Map<String, Double> mm3) {
    InstrumentState state = stateNow();
    int more = counted();
    return item.next(
        draft -> {
          draft.state = state;
          draft.uses += more;
          mm3.forEach((material, one) -> draft.cutMm3ByMaterial.merge(material, one, Double::sum));
        });
  }

  /** The item as if this use had not been counted; where it is in its round stays. */
  StockItem takenBack(Map<String, Double> mm3) {
    int less = Math.min(counted(), item.uses());
    return item.next(
        draft -> {
          draft.uses -= less;
          mm3.forEach(
              (material, one) ->
                  draft.cutMm3ByMaterial.computeIfPresent(
                      material, (any, all) -> all - one > 1e-9 ? all - one : null));
        });
  }
}
