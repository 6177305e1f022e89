package kerfwright.schedule.search;

import java.util.Arrays;

/**
 * What tells the instruments of one type apart in a flow: each carries a level from 1 up, changed
 * by uses and loads; at 0 it takes no more part.
 */
interface Levels {
  int start(int unit);

  int afterUse(int demand, int level);

  int afterLoad(int slot, int level);

  /** One kind of levels for any type. */
  interface Kind {
    Levels of(TypeView type);
  }

  /**
   * Uses left, capped by the most the rest of the day could take: all instruments that cannot run
   * out any more count as one pool. Exact for shortages and loads, as capping gives up only uses
   * that no instrument can see any more.
   */
  static Levels pooled(TypeView type) {
    int most = Arrays.stream(type.longest).max().orElse(0);
    return new Levels() {
      @Override
      public int start(int unit) {
        return Math.min(type.left[unit], most);
      }

      @Override
      public int afterUse(int demand, int level) {
        return Math.min(level, type.longest[demand]) - 1;
      }

      @Override
      public int afterLoad(int slot, int level) {
        return Math.min(level, type.longestAfterSlot[slot]);
      }
    };
  }

  /** Exact uses left, so that wear at the end of the day is known. */
  static Levels worn(TypeView type) {
    return new Levels() {
      @Override
      public int start(int unit) {
        return type.left[unit];
      }

      @Override
      public int afterUse(int demand, int level) {
        return level - 1;
      }

      @Override
      public int afterLoad(int slot, int level) {
        return level;
      }
    };
  }

  /** Each instrument by itself; its life has to be limited beside. */
  static Levels named(TypeView type) {
    return new Levels() {
      @Override
      public int start(int unit) {
        return unit + 1;
      }

      @Override
      public int afterUse(int demand, int level) {
        return level;
      }

      @Override
      public int afterLoad(int slot, int level) {
        return level;
      }
    };
  }
}
