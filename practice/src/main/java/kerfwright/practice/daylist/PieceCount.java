package kerfwright.practice.daylist;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;

/**
 * How often something beside the rotary instruments is needed, and how much of it is ready. No
 * forecast: what comes back clean during the day is not counted.
 *
 * @param need what
 * @param needed how many cases need it
 * @param clean pieces of its kinds that are clean or on a tray
 */
public record PieceCount(PieceNeed need, int needed, int clean) {
  /** Of one tray or of a day, each need once. */
  public static List<PieceCount> of(List<List<PieceNeed>> cases, Drawer drawer) {
    Map<List<String>, Integer> needed = new LinkedHashMap<>();
    cases.forEach(one -> one.forEach(need -> needed.merge(need.anyOf(), 1, Integer::sum)));
    List<StockItem> ready = new ArrayList<>();
    if (!needed.isEmpty()) {
      ready.addAll(drawer.in(InstrumentState.CLEAN));
      ready.addAll(drawer.in(InstrumentState.ON_TRAY));
    }
    return PieceNeed.tray(cases).stream()
        .map(need -> new PieceCount(need, needed.getOrDefault(need.anyOf(), 0), clean(need, ready)))
        .toList();
  }

  private static int clean(PieceNeed need, List<StockItem> ready) {
    return ready.stream().filter(need::servedBy).mapToInt(StockItem::pieces).sum();
  }

  /** True where not one is ready and the case cannot do without. */
  public boolean lacking() {
    return none() && !need.ifNeeded();
  }

  /** True where not one is ready. */
  public boolean none() {
    return clean == 0;
  }
}
