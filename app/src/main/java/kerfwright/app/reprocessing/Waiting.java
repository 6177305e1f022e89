package kerfwright.app.reprocessing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.DrawerPage;
import kerfwright.practice.drawer.DrawerQuery;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.reprocessing.Loads;
import kerfwright.practice.reprocessing.ReprocessingSetting;

/**
 * What waits for which step.
 *
 * @param used reusable instruments of this page to be cleaned
 * @param spent single-use ones of this page to be discarded
 * @param found used ones on all pages, of either sort
 * @param page which page of the used ones, the first is 0
 * @param cleaning what is being cleaned, first what is ready for a load
 */
public record Waiting(
    List<StockItem> used, List<StockItem> spent, int found, int page, List<InCleaning> cleaning) {
  /** Used instruments on one page: so many fit into one washing. */
  static final int PAGE = 100;

  /**
   * An instrument being cleaned.
   *
   * @param item which
   * @param ready when the practice's own minutes before a load are over
   * @param over true where they are
   */
  public record InCleaning(StockItem item, Instant ready, boolean over) {}

  static Waiting of(
      Drawer drawer, Loads loads, ReprocessingSetting own, Instant now, int wantedPage) {
    int page = Math.max(0, wantedPage);
    DrawerPage some = used(drawer, page);
    if (some.items().isEmpty() && page > 0) {
      page = 0;
      some = used(drawer, page);
    }
    List<StockItem> used = new ArrayList<>();
    List<StockItem> spent = new ArrayList<>();
    some.items().forEach(one -> (one.singleUse() ? spent : used).add(one));
    Map<java.util.UUID, Instant> since = loads.since(InstrumentState.CLEANING);
    Duration before = Duration.ofMinutes(own.minutesBeforeLoad());
    List<InCleaning> cleaning = new ArrayList<>();
    for (StockItem item : drawer.in(InstrumentState.CLEANING)) {
      Instant ready = since.getOrDefault(item.id(), now).plus(before);
      cleaning.add(new InCleaning(item, ready, !ready.isAfter(now)));
    }
    cleaning.sort(java.util.Comparator.comparing(InCleaning::ready));
    return new Waiting(used, spent, some.found(), page, cleaning);
  }

  private static DrawerPage used(Drawer drawer, int page) {
    return drawer.list(new DrawerQuery("", null, null, null, InstrumentState.USED, page, PAGE));
  }

  /** True where there are more used ones than one page shows. */
  public boolean paged() {
    return found > PAGE;
  }

  public boolean last() {
    return (page + 1L) * PAGE >= found;
  }

  /** Number of the first one shown, from 1. */
  public int first() {
    return page * PAGE + 1;
  }

  /** Number of the last one shown. */
  public int until() {
    return page * PAGE + used.size() + spent.size();
  }

  public long ready() {
    return cleaning.stream().filter(InCleaning::over).count();
  }

  public boolean none() {
    return used.isEmpty() && spent.isEmpty() && cleaning.isEmpty();
  }
}
