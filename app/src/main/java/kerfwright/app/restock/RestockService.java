package kerfwright.app.restock;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import kerfwright.practice.daylist.DayBooks;
import kerfwright.practice.daylist.TypeName;
import kerfwright.practice.daylist.UsesAskedFor;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.DrawerPage;
import kerfwright.practice.drawer.DrawerQuery;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.label.Packages;
import kerfwright.practice.record.CutRecord;
import kerfwright.practice.record.PlanStep;
import kerfwright.practice.record.RecordQuery;
import kerfwright.practice.restock.PastUse;
import kerfwright.practice.restock.PastUses;
import kerfwright.practice.restock.PurchaseRequests;
import kerfwright.practice.restock.RestockOptions;
import kerfwright.practice.restock.RestockReport;
import kerfwright.practice.restock.Restocking;
import org.jspecify.annotations.Nullable;

/**
 * Brings drawer, packages and record together.
 *
 * @param drawer the stock
 * @param packages makers' packages, for their last day of use
 * @param record the cut record
 * @param procedures procedure of a step of a plan, where it is known
 * @param days the day lists, which ask for instruments
 * @param requests what planned days lack
 * @param wearFactor how many times as fast as in the literature an item wears here
 * @param clock tells the day
 */
public record RestockService(
    Drawer drawer,
    Packages packages,
    CutRecord record,
    Function<PlanStep, Optional<String>> procedures,
    DayBooks days,
    PurchaseRequests requests,
    ToDoubleFunction<StockItem> wearFactor,
    Clock clock) {
  private static final int PORTION = 1000;

  LocalDate today() {
    return LocalDate.now(clock);
  }

  RestockReport report(RestockOptions options) {
    ZoneId zone = clock.getZone();
    Instant from = today().minusWeeks(options.historyWeeks()).atStartOfDay(zone).toInstant();
    List<PastUse> uses = PastUses.since(record, from, zone, procedures);
    Map<String, Integer> asked = UsesAskedFor.byType(days, today(), options.aheadWeeks());
    Restocking.Outlook outlook =
        new Restocking.Outlook(
            began(from, uses),
            packages.expiries(),
            article -> asked.getOrDefault(TypeName.of(article.properties()), 0),
            requests.all(),
            drawer::history,
            zone);
    return new Restocking(today(), options, wearFactor).report(items(), uses, outlook);
  }

  /**
   * The day of the oldest cut, as far as the history looked at goes: what was entered first need
   * not have been cut first.
   */
  private @Nullable LocalDate began(Instant from, List<PastUse> uses) {
    RecordQuery before = new RecordQuery(null, null, null, null, null, from, null, 1);
    return record.list(before).isEmpty()
        ? uses.stream().map(PastUse::day).min(Comparator.naturalOrder()).orElse(null)
        : LocalDate.ofInstant(from, clock.getZone());
  }

  private List<StockItem> items() {
    List<StockItem> items = new ArrayList<>();
    for (int page = 0; ; page++) {
      DrawerPage some = drawer.list(new DrawerQuery("", null, null, null, null, page, PORTION));
      items.addAll(some.items());
      if (some.items().size() < PORTION) {
        return items;
      }
    }
  }
}
