package kerfwright.app.reprocessing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.reprocessing.Loads;
import kerfwright.practice.reprocessing.ReprocessingSetting;

/**
 * What waits for which step.
 *
 * @param used reusable instruments to be cleaned
 * @param spent single-use ones to be discarded
 * @param cleaning what is being cleaned, first what is ready for a load
 */
public record Waiting(List<StockItem> used, List<StockItem> spent, List<InCleaning> cleaning) {
  /**
   * An instrument being cleaned.
   *
   * @param item which
   * @param ready when the practice's own minutes before a load are over
   * @param over true where they are
   */
  public record InCleaning(StockItem item, Instant ready, boolean over) {}

  static Waiting of(Drawer drawer, Loads loads, ReprocessingSetting own, Instant now) {
    List<StockItem> used = new ArrayList<>();
    List<StockItem> spent = new ArrayList<>();
    drawer.in(InstrumentState.USED).forEach(one -> (one.singleUse() ? spent : used).add(one));
    Map<java.util.UUID, Instant> since = loads.since(InstrumentState.CLEANING);
    Duration before = Duration.ofMinutes(own.minutesBeforeLoad());
    List<InCleaning> cleaning = new ArrayList<>();
    for (StockItem item : drawer.in(InstrumentState.CLEANING)) {
      Instant ready = since.getOrDefault(item.id(), now).plus(before);
      cleaning.add(new InCleaning(item, ready, !ready.isAfter(now)));
    }
    cleaning.sort(java.util.Comparator.comparing(InCleaning::ready));
    return new Waiting(used, spent, cleaning);
  }

  public long ready() {
    return cleaning.stream().filter(InCleaning::over).count();
  }

  public boolean none() {
    return used.isEmpty() && spent.isEmpty() && cleaning.isEmpty();
  }
}
