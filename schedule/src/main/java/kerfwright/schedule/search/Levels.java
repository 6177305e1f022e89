package kerfwright.schedule.search;

import java.util.Arrays;

/**
 * What tells the instruments of one type apart in a flow: each carries a level from 1 up; at 0 it
 * takes no more part.
 *
 * @param start the level of each instrument when the day starts
 * @param spent levels a use takes
 * @param mostUsed by demand: the most an instrument may count for before it is used
 * @param mostLoaded by slot: the most it may count for after a load
 */
record Levels(int[] start, int spent, int[] mostUsed, int[] mostLoaded) {
  int afterUse(int demand, int level) {
    return Math.min(level, mostUsed[demand]) - spent;
  }

  int afterLoad(int slot, int level) {
    return Math.min(level, mostLoaded[slot]);
  }

  int highest() {
    return Arrays.stream(start).max().orElse(0);
  }

  /**
   * Uses left, capped by the most the rest of the day could take: all instruments that cannot run
   * out any more count as one pool. Exact for shortages and loads, as capping gives up only uses
   * that no instrument can see any more.
   */
  static Levels pooled(TypeView type) {
    int most = Arrays.stream(type.longest).max().orElse(0);
    int[] start = Arrays.stream(type.left).map(left -> Math.min(left, most)).toArray();
    return new Levels(start, 1, type.longest, type.longestAfterSlot);
  }

  /** Exact uses left, so that wear at the end of the day is known. */
  static Levels worn(TypeView type) {
    return uncapped(type, type.left, 1);
  }

  /** Each instrument by itself; its life has to be limited beside. */
  static Levels named(TypeView type) {
    int[] names = new int[type.units];
    Arrays.setAll(names, unit -> unit + 1);
    return uncapped(type, names, 0);
  }

  private static Levels uncapped(TypeView type, int[] start, int spent) {
    int[] demands = new int[type.demands];
    int[] slots = new int[type.longestAfterSlot.length];
    Arrays.fill(demands, Integer.MAX_VALUE);
    Arrays.fill(slots, Integer.MAX_VALUE);
    return new Levels(start, spent, demands, slots);
  }
}
